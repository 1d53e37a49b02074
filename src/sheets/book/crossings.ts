import type { Point } from '../sheet.ts'

/** A straight stretch of line, and what it belongs to: stretches of one owner may meet. */
export interface Stretch {
  readonly owner: string
  readonly from: Point
  readonly to: Point
}

/** How many pairs of stretches with different owners cross or touch, but for those that begin or end together. */
export function countCrossings(stretches: readonly Stretch[]): number {
  let count = 0
  for (const [index, a] of stretches.entries())
    for (const b of stretches.slice(index + 1)) if (a.owner !== b.owner && cross(a, b)) count++
  return count
}

const near = 1e-6

function cross(a: Stretch, b: Stretch): boolean {
  if (same(a.from, b.from) || same(a.to, b.to)) return overlap(a, b)
  const sides = (of: Stretch, point: Point) => {
    const turn = (of.to.x - of.from.x) * (point.y - of.from.y) - (of.to.y - of.from.y) * (point.x - of.from.x)
    return Math.abs(turn) < near ? 0 : Math.sign(turn)
  }
  const [c, d, e, f] = [sides(a, b.from), sides(a, b.to), sides(b, a.from), sides(b, a.to)]
  if (c === 0 && d === 0) return overlap(a, b)
  return c * d <= 0 && e * f <= 0
}

const same = (a: Point, b: Point): boolean => Math.abs(a.x - b.x) < near && Math.abs(a.y - b.y) < near

// Two stretches of one line that share more than a point.
function overlap(a: Stretch, b: Stretch): boolean {
  const slope = (of: Stretch) =>
    (of.to.y - of.from.y) * (b.to.x - b.from.x) - (b.to.y - b.from.y) * (of.to.x - of.from.x)
  if (Math.abs(slope(a)) > near) return false
  const shared =
    Math.min(Math.max(a.from.x, a.to.x), Math.max(b.from.x, b.to.x)) -
    Math.max(Math.min(a.from.x, a.to.x), Math.min(b.from.x, b.to.x))
  const onOneLine =
    Math.abs((a.to.x - a.from.x) * (b.from.y - a.from.y) - (a.to.y - a.from.y) * (b.from.x - a.from.x)) < near
  return onOneLine && shared > near
}
