import { type Metres, metres, type Point3, point3, type Radians, radians } from '../../measure/index.ts'
import { angleBetween, between } from './vector.ts'

/** A straight stretch from one point to another. */
export interface Segment {
  readonly from: Point3
  readonly to: Point3
}

/** Where two stretches come nearest to each other. */
export interface Approach {
  readonly distance: Metres
  /** The point on the first stretch. */
  readonly at: Point3
  /** From there to the nearest end of either stretch: nothing where one of them ends there. */
  readonly fromEnd: Metres
}

/**
 * Nearest approach of two stretches, if it is no further than a limit: the feet of their common perpendicular, each held
 * within its stretch. C. Ericson, Real-Time Collision Detection, 2005, section 5.1.9 (from memory). In plain numbers,
 * for most pairs that are asked for lie further apart and leave nothing behind.
 */
export function approachWithin(limit: number, a: Segment, b: Segment): Approach | undefined {
  const { from: p } = a
  const { from: q } = b
  const ux = a.to.x - p.x
  const uy = a.to.y - p.y
  const uz = a.to.z - p.z
  const vx = b.to.x - q.x
  const vy = b.to.y - q.y
  const vz = b.to.z - q.z
  const wx = p.x - q.x
  const wy = p.y - q.y
  const wz = p.z - q.z
  const uu = ux * ux + uy * uy + uz * uz
  const vv = vx * vx + vy * vy + vz * vz
  const uv = ux * vx + uy * vy + uz * vz
  const uw = ux * wx + uy * wy + uz * wz
  const vw = vx * wx + vy * wy + vz * wz
  const sine = uu * vv - uv * uv
  let s = sine > 1e-12 * uu * vv ? held((uv * vw - uw * vv) / sine) : 0
  let t = ratio(uv * s + vw, vv)
  // Beyond an end of the second, and where that is but a point, the first is asked anew.
  if (t < 0 || t > 1 || vv === 0) {
    t = held(t)
    s = held(ratio(uv * t - uw, uu))
  }
  const distance = Math.hypot(wx + s * ux - t * vx, wy + s * uy - t * vy, wz + s * uz - t * vz)
  if (distance > limit) return undefined
  return {
    distance: metres(distance),
    at: point3(p.x + s * ux, p.y + s * uy, p.z + s * uz),
    fromEnd: metres(Math.min(Math.min(s, 1 - s) * Math.sqrt(uu), Math.min(t, 1 - t) * Math.sqrt(vv))),
  }
}

const held = (share: number): number => Math.max(0, Math.min(1, share))

/** A stretch without length has but one point. */
const ratio = (a: number, b: number): number => (b === 0 ? 0 : a / b)

/** The angle at which two stretches pass each other, at most a quarter of a turn; nothing where they run alike. */
export function crossingAngle(a: Segment, b: Segment): Radians {
  const angle = angleBetween(between(a.from, a.to), between(b.from, b.to)) ?? 0
  return radians(Math.min(angle, Math.PI - angle))
}
