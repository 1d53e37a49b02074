import { metres, type Point3 } from '../../measure/index.ts'
import type { Boom } from '../../rig/index.ts'
import { pullByMoments } from './moments.ts'
import type { Work } from './work.ts'

/** Without geometry, as of a throat halyard, a line holds half of its spar. */
const half = 1 / 2

/** What a halyard of a gaff or a topping lift pulls for a weight of one in its spar. */
export function pullOfHeld({ line, deed, spar }: Work): number {
  if (deed.object === 'throat' || !spar || spar.kind === 'yard' || spar.kind === 'studdingsail boom')
    return half
  const [before, end] = line.lead.slice(-2)
  const { inner, outer } = spar
  if (!inner || !outer || !before || !end || line.leadUnknown !== undefined) return half
  // A topping lift is told to the end of its pendant; the pendant is fast to the end of the boom.
  const fastAt = deed.verb === 'tops' ? outer : asHoisted(end.at, spar, inner, outer)
  return pullByMoments({ inner, outer, fastAt, towards: before.at }) ?? half
}

/** A halyard is told to its block on the lowered gaff: as far out along it, that block stands on the gaff when set. */
function asHoisted(block: Point3, { hoists, loweredHeight }: Boom, inner: Point3, outer: Point3): Point3 {
  if (!hoists || loweredHeight === undefined) return block
  const out = Math.hypot(block.x - inner.x, block.z - loweredHeight)
  const share = Math.min(1, out / Math.hypot(outer.x - inner.x, outer.z - inner.z))
  return {
    x: metres(inner.x + share * (outer.x - inner.x)),
    y: block.y,
    z: metres(inner.z + share * (outer.z - inner.z)),
  }
}
