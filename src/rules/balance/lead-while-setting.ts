import { balanceOf } from '../../reckon/index.ts'
import { unfinished } from '../many-as-one.ts'
import { listed } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { outside, settingRange, shownShare } from './range.ts'

/** Less sail than this share of all tells nothing: a headsail alone is for steering off. */
const enough = 1 / 4

/** Balance lost on the way, while sail is set in the order that the text gives. */
export const leadWhileSetting: Rule = {
  slug: 'balance/lead-while-setting',
  severity: 'note',
  judges: 'vessels',
  *judge({ rig, figures }) {
    const { total, square, foreAndAft } = figures
    // A fore-and-after begins head to wind, with her aftermost sail.
    const isSquare = square.known && foreAndAft.known && square.value > foreAndAft.value
    if (!total.known || !isSquare) return
    const astray = rig.order.flatMap((name, i) => {
      const { area, lead } = balanceOf(rig, figures, rig.order.slice(0, i + 1))
      if (!area.known || !lead.known || area.value < total.value * enough) return []
      const share = outside(lead.value, settingRange)
      return share === undefined ? [] : [{ name, share }]
    })
    const [first] = astray
    if (!first) return
    const sails = astray.map(({ name }) => `the ${name}`)
    yield {
      at: rig.sailAt.get(first.name)?.span ?? rig.vessel.span,
      message: `As sail is set in the order given, the lead is ${shownShare(first.share)} of the waterline with the ${first.name}; between ${shownShare(settingRange.low)} and ${shownShare(settingRange.high)} she steers.${sails.length > 1 ? ` It lies outside with ${listed(sails)}.` : ''}`,
      aboard: 'She falls off or comes up by herself until more sail is set.',
      remedy: 'Set sail at both ends of her by turns.',
      about: astray.map(({ name }) => name),
      follows: [unfinished],
    }
  },
}
