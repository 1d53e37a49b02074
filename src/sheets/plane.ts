import type { PathStep, Point } from './sheet.ts'

/** An upright rectangle on paper, in millimetres, y down. */
export interface Rect {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** A straight stretch. */
export type Stretch = readonly [Point, Point]

export const rect = (left: number, top: number, right: number, bottom: number): Rect => ({
  left,
  top,
  right,
  bottom,
})

/** The rectangle with its sides moved outward; a negative margin moves them in. */
export const grown = ({ left, top, right, bottom }: Rect, by: number): Rect =>
  rect(left - by, top - by, right + by, bottom + by)

export const rectsMeet = (a: Rect, b: Rect): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom

export const holds = (box: Rect, { x, y }: Point): boolean =>
  x > box.left && x < box.right && y > box.top && y < box.bottom

/** The smallest rectangle about points; undefined for none. */
export function boundsOf(points: readonly Point[]): Rect | undefined {
  if (points.length === 0) return undefined
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const { x, y } of points) {
    if (x < left) left = x
    if (x > right) right = x
    if (y < top) top = y
    if (y > bottom) bottom = y
  }
  return rect(left, top, right, bottom)
}

export const cornersOf = ({ left, top, right, bottom }: Rect): readonly Point[] => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
]

export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
})

export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y)

/** The point turned about the origin by radians; on paper, with y down, a positive angle turns clockwise. */
export function turned({ x, y }: Point, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  return { x: x * cos - y * sin, y: x * sin + y * cos }
}

/** Whether a stretch passes through the inside of a rectangle, by cutting it at the four sides. */
export function stretchMeetsRect([a, b]: Stretch, { left, top, right, bottom }: Rect): boolean {
  const across = withinSpan(a.x, b.x, left, right)
  const down = withinSpan(a.y, b.y, top, bottom)
  return Math.max(across.from, down.from) < Math.min(across.to, down.to)
}

/** Which part of the way from `a` to `b`, as shares of it from 0 to 1, lies between the two bounds. */
function withinSpan(a: number, b: number, low: number, high: number): { from: number; to: number } {
  const run = b - a
  if (run === 0) return a > low && a < high ? whole : nowhere
  const [first, second] = [(low - a) / run, (high - a) / run]
  return {
    from: Math.max(0, Math.min(first, second)),
    to: Math.min(1, Math.max(first, second)),
  }
}

const whole = { from: 0, to: 1 }
const nowhere = { from: 1, to: 0 }

/** The straight stretches of a run of points. */
export function stretches(points: readonly Point[], closed = false): readonly Stretch[] {
  const ends = closed ? [...points, ...points.slice(0, 1)] : points
  return ends.slice(1).map((point, i): Stretch => [ends[i] ?? point, point])
}

/** A path as a run of points: curves are cut in `pieces` straight stretches. The closing stretch is left out. */
export function flattened(steps: readonly PathStep[], pieces = 12): readonly Point[] {
  const points: Point[] = []
  for (const step of steps) {
    if (step[0] === 'M' || step[0] === 'L') points.push({ x: step[1], y: step[2] })
    const from = points[points.length - 1]
    if (step[0] !== 'C' || !from) continue
    const [, x1, y1, x2, y2, x3, y3] = step
    const curve = [from, { x: x1, y: y1 }, { x: x2, y: y2 }, { x: x3, y: y3 }] as const
    for (let i = 1; i <= pieces; i++) points.push(onCurve(curve, i / pieces))
  }
  return points
}

/** A cubic curve by its ends and the two points that draw it. */
export type Curve = readonly [Point, Point, Point, Point]

/** The point of a cubic curve at t from 0 to 1. */
export function onCurve([a, b, c, d]: Curve, t: number): Point {
  const u = 1 - t
  const weigh = (p: number, q: number, r: number, s: number) =>
    u * u * u * p + 3 * u * u * t * q + 3 * u * t * t * r + t * t * t * s
  return { x: weigh(a.x, b.x, c.x, d.x), y: weigh(a.y, b.y, c.y, d.y) }
}
