import type { Metres, Point3 } from '../measure/index.ts'
import type { BelayingPoint, Place } from '../rig/index.ts'

/** How far apart two places are along the deck, in metres; undefined where one is not measured. */
export function apart(a: Place | BelayingPoint, b: Place | BelayingPoint): Metres | undefined {
  if (!a.at || !b.at) return undefined
  return acrossDeck(a.at, b.at)
}

/** The distance between two points seen from above. */
export const acrossDeck = (a: Point3, b: Point3): Metres => Math.hypot(a.x - b.x, a.y - b.y) as Metres
