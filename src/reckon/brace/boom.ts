import { type Radians, radians } from '../../measure/index.ts'
import type { Boom, Rig } from '../../rig/index.ts'

/** Squared off as far as it goes with nothing in the way, from amidships: common practice, no source. */
const squaredOff = radians((80 * Math.PI) / 180)

/** How far a boom swings out before it meets the aftermost shroud or backstay that stands within its length. */
export function boomLimit({ inner, length, outer }: Boom, { standing }: Pick<Rig, 'standing'>): Radians {
  if (!inner) return squaredOff
  const reach = length ?? (outer ? Math.hypot(outer.x - inner.x, outer.z - inner.z) : 0)
  const limits = standing.flatMap(part => {
    if (part.kind === 'stay' || !part.from || !part.to) return []
    const share = (part.from.z - inner.z) / (part.from.z - part.to.z)
    if (!(share >= 0 && share <= 1)) return []
    const aftermost = part.to.x + (part.count - 1) * (part.apart ?? 0)
    const abaft = part.from.x + (aftermost - part.from.x) * share - inner.x
    const out = Math.abs(part.from.y + (part.to.y - part.from.y) * share)
    return abaft > 0 && Math.hypot(abaft, out) < reach ? [Math.atan2(out, abaft)] : []
  })
  return radians(Math.min(squaredOff, ...limits))
}
