import { between, boundsOf, type Rect, type Stretch, stretches } from './plane.ts'
import type { Point } from './sheet.ts'

/** A closed run of points, prepared for cutting lines at its edge. */
export interface Shape {
  readonly points: readonly Point[]
  readonly edges: readonly Stretch[]
  readonly bounds: Rect
}

export const shapeOf = (points: readonly Point[]): Shape => ({
  points,
  edges: stretches(points, true),
  bounds: boundsOf(points) ?? { left: 0, top: 0, right: 0, bottom: 0 },
})

/** Whether the point lies inside the shape (an odd number of edges to its right). */
export function isInside({ x, y }: Point, shape: Shape): boolean {
  const { left, right, top, bottom } = shape.bounds
  if (x < left || x > right || y < top || y > bottom) return false
  let inside = false
  for (const [a, b] of shape.edges)
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside
  return inside
}

/** Runs of a line that lie inside at least one of the shapes, and those that lie outside all of them. */
export interface Parts {
  readonly inside: readonly (readonly Point[])[]
  readonly outside: readonly (readonly Point[])[]
}

/** A run of points cut at the edges of shapes. Neighbouring pieces on one side of the edge stay one run. */
export function partsOf(points: readonly Point[], shapes: readonly Shape[]): Parts {
  const inside: Point[][] = []
  const outside: Point[][] = []
  let before: boolean | undefined
  for (const stretch of stretches(points)) {
    const near = shapes.filter(shape => mayMeet(stretch, shape))
    for (const [a, b] of cutAt(stretch, near)) {
      const middle = between(a, b, 0.5)
      const isIn = near.some(shape => isInside(middle, shape))
      const runs = isIn ? inside : outside
      const last = before === isIn ? runs[runs.length - 1] : undefined
      if (last) last.push(b)
      else runs.push([a, b])
      before = isIn
    }
  }
  return { inside, outside }
}

function mayMeet([a, b]: Stretch, { bounds }: Shape): boolean {
  return (
    Math.min(a.x, b.x) <= bounds.right &&
    Math.max(a.x, b.x) >= bounds.left &&
    Math.min(a.y, b.y) <= bounds.bottom &&
    Math.max(a.y, b.y) >= bounds.top
  )
}

function cutAt(stretch: Stretch, shapes: readonly Shape[]): readonly Stretch[] {
  const cuts: number[] = []
  for (const { edges } of shapes)
    for (const edge of edges) {
      const cut = crossing(stretch, edge)
      if (cut !== undefined) cuts.push(cut)
    }
  if (cuts.length === 0) return [stretch]
  const marks = [0, ...cuts.sort((a, b) => a - b), 1]
  return marks.slice(1).flatMap((to, i): Stretch[] => {
    const from = marks[i] ?? 0
    return to - from > 1e-9 ? [[between(...stretch, from), between(...stretch, to)]] : []
  })
}

/** How far along the first stretch, from 0 to 1, it crosses the second; undefined where it does not. */
export function crossing([a, b]: Stretch, [c, d]: Stretch): number | undefined {
  const rx = b.x - a.x
  const ry = b.y - a.y
  const sx = d.x - c.x
  const sy = d.y - c.y
  const cross = rx * sy - ry * sx
  if (cross === 0) return undefined
  const t = ((c.x - a.x) * sy - (c.y - a.y) * sx) / cross
  const u = ((c.x - a.x) * ry - (c.y - a.y) * rx) / cross
  return t > 0 && t < 1 && u >= 0 && u <= 1 ? t : undefined
}
