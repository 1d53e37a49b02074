import { type Rect, turned } from './plane.ts'
import type { Point } from './sheet.ts'

/** A label's room on paper: a rectangle about its middle, turned by `angle` (radians, clockwise on paper). */
export interface LabelBox {
  readonly middle: Point
  readonly width: number
  readonly height: number
  readonly angle: number
}

/** The four corners of a label's box. */
export function labelCorners({ middle, width, height, angle }: LabelBox): readonly Point[] {
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([x = 0, y = 0]) => {
    const off = turned({ x: (x * width) / 2, y: (y * height) / 2 }, angle)
    return { x: middle.x + off.x, y: middle.y + off.y }
  })
}

/** Whether two label boxes overlap: no line along a side of either parts them. */
export function labelBoxesMeet(a: LabelBox, b: LabelBox): boolean {
  // Boxes further apart than their circles cannot meet: most pairs are done here.
  const apart = Math.hypot(a.middle.x - b.middle.x, a.middle.y - b.middle.y)
  if (apart >= (Math.hypot(a.width, a.height) + Math.hypot(b.width, b.height)) / 2) return false
  const [as, bs] = [labelCorners(a), labelCorners(b)]
  return [a.angle, a.angle + Math.PI / 2, b.angle, b.angle + Math.PI / 2].every(angle => {
    const axis = { x: Math.cos(angle), y: Math.sin(angle) }
    const [ra, rb] = [reach(as, axis), reach(bs, axis)]
    return ra.from < rb.to && rb.from < ra.to
  })
}

function reach(points: readonly Point[], axis: Point): { readonly from: number; readonly to: number } {
  let [from, to] = [Infinity, -Infinity]
  for (const { x, y } of points) {
    const along = x * axis.x + y * axis.y
    if (along < from) from = along
    if (along > to) to = along
  }
  return { from, to }
}

/** An upright rectangle as a label's box. */
export const uprightBox = ({ left, top, right, bottom }: Rect): LabelBox => ({
  middle: { x: (left + right) / 2, y: (top + bottom) / 2 },
  width: right - left,
  height: bottom - top,
  angle: 0,
})
