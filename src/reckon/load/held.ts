import { pullByMoments } from './moments.ts'
import type { Work } from './work.ts'

/** Without geometry, as of a throat halyard, a line holds half of its spar. */
const half = 1 / 2

/** What a halyard of a gaff or a topping lift pulls for a weight of one in its spar. */
export function pullOfHeld({ line, deed, spar }: Work): number {
  if (deed.object === 'throat' || !spar || spar.kind === 'yard' || !spar.inner || !spar.outer) return half
  const [before, end] = line.lead.slice(-2)
  if (!before || !end || line.leadUnknown !== undefined) return half
  const { inner, outer } = spar
  // A topping lift is told to the end of its pendant; the pendant is fast to the end of the boom.
  const fastAt = deed.verb === 'tops' ? outer : end.at
  return pullByMoments({ inner, outer, fastAt, towards: before.at }) ?? half
}
