import { type Metres, metres, type Point3, type Radians, radians } from '../../measure/index.ts'
import { angleBetween, between, beyond, distance, dot } from './vector.ts'

/** A straight stretch from one point to another. */
export interface Segment {
  readonly from: Point3
  readonly to: Point3
}

/** Where two stretches come nearest to each other. */
export interface Approach {
  readonly distance: Metres
  /** The point on the first stretch, and the one on the second. */
  readonly at: Point3
  readonly other: Point3
  /** From there to the nearest end of either stretch: nothing where one of them ends there. */
  readonly fromEnd: Metres
}

/**
 * Nearest approach of two stretches: the feet of their common perpendicular, each held within its stretch.
 * C. Ericson, Real-Time Collision Detection, 2005, section 5.1.9 (from memory).
 */
export function approach(a: Segment, b: Segment): Approach {
  const [one, two, apart] = [between(a.from, a.to), between(b.from, b.to), between(b.from, a.from)]
  const [aa, bb, ab] = [dot(one, one), dot(two, two), dot(one, two)]
  const [ac, bc] = [dot(one, apart), dot(two, apart)]
  const sine = aa * bb - ab * ab
  let s = sine > 1e-12 * aa * bb ? within((ab * bc - ac * bb) / sine) : 0
  let t = ratio(ab * s + bc, bb)
  if (t < 0 || t > 1 || bb === 0) {
    t = within(t)
    s = within(ratio(ab * t - ac, aa))
  }
  const [at, other] = [beyond(a.from, one, s), beyond(b.from, two, t)]
  const fromEnd = Math.min(Math.min(s, 1 - s) * Math.sqrt(aa), Math.min(t, 1 - t) * Math.sqrt(bb))
  return { distance: metres(distance(at, other)), at, other, fromEnd: metres(fromEnd) }
}

const within = (share: number): number => Math.max(0, Math.min(1, share))

/** A stretch without length has but one point. */
const ratio = (a: number, b: number): number => (b === 0 ? 0 : a / b)

/** The angle at which two stretches pass each other, at most a quarter of a turn; nothing where they run alike. */
export function crossingAngle(a: Segment, b: Segment): Radians {
  const angle = angleBetween(between(a.from, a.to), between(b.from, b.to)) ?? 0
  return radians(Math.min(angle, Math.PI - angle))
}
