import { type Shape, shapeOf } from '../clip.ts'
import { between, type Curve, distance, onCurve } from '../plane.ts'
import type { Point } from '../sheet.ts'
import type { SailShape } from './sail-shape.ts'

const edgePieces = 16

/** An edge as a run of points. */
export const pointsOf = (curve: Curve): readonly Point[] =>
  Array.from({ length: edgePieces + 1 }, (_, i) => onCurve(curve, i / edgePieces))

/** Seams and reef bands stop at the bolt rope's inner edge. */
export const ropeInside = 0.18

/** The sail's outline moved inward. */
export const insetShape = (drawn: SailShape, by: number): Shape => shapeOf(insetEdges(drawn, by).flat())

/** Each edge of the sail, moved inward square to itself. */
export function insetEdges({ edges, shape }: SailShape, by: number): readonly (readonly Point[])[] {
  const middle = middleOfBounds(shape)
  return edges.map(({ curve }) => {
    const points = pointsOf(curve)
    return points.map((point, i) => {
      const along = unit(points[Math.max(0, i - 1)] ?? point, points[Math.min(edgePieces, i + 1)] ?? point)
      const inward = Math.sign(along.x * (middle.y - point.y) - along.y * (middle.x - point.x)) || 1
      return { x: point.x - along.y * by * inward, y: point.y + along.x * by * inward }
    })
  })
}

/** The middle of a shape's extent. */
export const middleOfBounds = ({ bounds: { left, right, top, bottom } }: Shape): Point => ({
  x: (left + right) / 2,
  y: (top + bottom) / 2,
})

/** The middle of an edge's chord. */
export const middleOf = (curve: Curve): Point => between(curve[0], curve[3], 0.5)

/** The direction from one point to another, one long; straight down where they are one. */
export function unit(a: Point, b: Point): Point {
  const length = distance(a, b)
  return length === 0 ? { x: 0, y: 1 } : { x: (b.x - a.x) / length, y: (b.y - a.y) / length }
}
