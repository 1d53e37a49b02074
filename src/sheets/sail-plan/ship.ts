import type { Figures } from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import { type Centres, centresOf } from './centres.ts'
import { type SeenEdge, seenEdges } from './hidden-edges.ts'
import { type HullLines, hullLines } from './hull-lines.ts'
import { type HullShape, hullShape } from './hull-shape.ts'
import { underKeel } from './layout.ts'
import { type SailShape, sailShape } from './sail-shape.ts'
import type { View } from './view.ts'

/** The ship as she comes on paper in one view. */
export interface Ship {
  readonly rig: Rig
  readonly figures: Figures
  readonly view: View
  readonly lines: HullLines | undefined
  readonly hull: HullShape | undefined
  /** Squares from low to high, then fore-and-aft sails from forward aft: the nearest last. */
  readonly sails: readonly SailShape[]
  readonly edges: readonly SeenEdge[]
  readonly centres: Centres
  /** The lowest of the hull on paper. */
  readonly keelY: number
}

/** The ship in a view. */
export function shipIn(rig: Rig, figures: Figures, view: View): Ship {
  const lines = hullLines(rig)
  const sails = inDrawingOrder(
    rig.sails.flatMap(sail => sailShape(sail, figures.sails.get(sail.name), rig, view) ?? []),
  )
  const keelY = view.at(0, lines ? -lines.draught : 0).y
  return {
    rig,
    figures,
    view,
    lines,
    hull: lines && hullShape(lines, view),
    sails,
    edges: seenEdges(sails),
    centres: centresOf(rig, figures, view, keelY + underKeel - 7.2),
    keelY,
  }
}

function inDrawingOrder(shapes: readonly SailShape[]): readonly SailShape[] {
  const squares = shapes.filter(({ sail }) => sail.kind !== 'fore-and-aft')
  const others = shapes.filter(({ sail }) => sail.kind === 'fore-and-aft')
  // On paper the bow is to the right and up is less: low means a great y, forward a great x.
  const byHeight = (a: SailShape, b: SailShape) => b.centroid.y - a.centroid.y || b.centroid.x - a.centroid.x
  const byPlace = (a: SailShape, b: SailShape) => b.centroid.x - a.centroid.x || b.centroid.y - a.centroid.y
  return [...squares.toSorted(byHeight), ...others.toSorted(byPlace)]
}
