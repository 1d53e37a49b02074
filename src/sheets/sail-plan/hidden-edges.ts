import { partsOf } from '../clip.ts'
import { dash, ink, weight } from '../ink.ts'
import type { Mark, Point } from '../sheet.ts'
import { pointsOf } from './sail-edges.ts'
import type { EdgeName, SailShape } from './sail-shape.ts'
import { run } from './strokes.ts'

/** An edge of a sail, cut into what is seen and what lies behind a nearer sail. */
export interface SeenEdge {
  readonly sail: string
  readonly name: EdgeName
  readonly seen: readonly (readonly Point[])[]
  readonly hidden: readonly (readonly Point[])[]
}

/** The edges of sails that stand in drawing order, the nearest last. */
export function seenEdges(drawn: readonly SailShape[]): readonly SeenEdge[] {
  return drawn.flatMap((shape, i) => {
    const nearer = drawn.slice(i + 1).map(other => other.shape)
    return shape.edges.map(({ name, curve }): SeenEdge => {
      const { inside, outside } = partsOf(pointsOf(curve), nearer)
      return { sail: shape.sail.name, name, seen: outside, hidden: inside }
    })
  })
}

/** The hidden edges, dotted, in one group over the sails. */
export function hiddenEdgeMarks(edges: readonly SeenEdge[]): readonly Mark[] {
  const runs = edges.flatMap(({ hidden }) => hidden)
  if (runs.length === 0) return []
  return [
    {
      kind: 'group',
      id: 'hidden-edges',
      title: 'Edges hidden by a nearer sail',
      marks: runs.map(points => run(points, { ink: ink.rig, width: weight.b, dash: dash.hidden })),
    },
  ]
}
