import { unfinished } from '../many-as-one.ts'
import type { Rule } from '../rule.ts'
import { outside, setRange, shownShare } from './range.ts'

/** A centre of effort abaft the lateral centre, or further before it than a vessel bears. */
export const leadOutOfRange: Rule = {
  slug: 'balance/lead-out-of-range',
  severity: 'warning',
  judges: 'vessels',
  *judge({ rig, figures: { lead } }) {
    const share = lead.known ? outside(lead.value, setRange) : undefined
    const isWhole = rig.masts.every(mast => rig.sails.some(sail => sail.mast === mast.name))
    if (share === undefined || !isWhole) return
    const isAbaft = share < 0
    const isLittle = share < setRange.low
    yield {
      at: rig.vessel.span,
      message: isAbaft
        ? `With all plain sail set her centre of effort lies ${shownShare(-share)} of the waterline abaft the lateral centre.`
        : `With all plain sail set her centre of effort lies ${shownShare(share)} of the waterline before the lateral centre; ${shownShare(setRange.low)} to ${shownShare(setRange.high)} is usual.`,
      aboard: isLittle
        ? 'She gripes: hard weather helm.'
        : 'She carries lee helm, and will not come to the wind.',
      remedy:
        'Check the lateral centre and the places of the sails; then see which sail she should do without.',
      about: [rig.vessel.name],
      follows: [unfinished],
    }
  },
}
