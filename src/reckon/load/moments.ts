import type { Point3 } from '../../measure/index.ts'

/** A line that makes a smaller angle than this with its spar pulls along it and lifts nothing. */
const leastSine = 0.1

/** A spar that turns about its inner end, and the line that holds it up. */
export interface HeldSpar {
  readonly inner: Point3
  readonly outer: Point3
  /** Where the line is fast to the spar, and the block it leads up to. */
  readonly fastAt: Point3
  readonly towards: Point3
}

/**
 * The pull of the line for a weight of one that hangs in the middle of the spar, by moments about the spar's inner end
 * in the plane of the centreline. Undefined where the line pulls along the spar.
 */
export function pullByMoments({ inner, outer, fastAt, towards }: HeldSpar): number | undefined {
  const lever = { x: fastAt.x - inner.x, z: fastAt.z - inner.z }
  const rope = { x: towards.x - fastAt.x, z: towards.z - fastAt.z }
  const length = Math.hypot(rope.x, rope.z)
  const arm = Math.abs(lever.x * rope.z - lever.z * rope.x) / length
  if (!(arm > leastSine * Math.hypot(lever.x, lever.z))) return undefined
  return Math.abs(outer.x - inner.x) / 2 / arm
}
