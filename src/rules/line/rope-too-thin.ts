import { hungAlike, soOthers } from '../hung-alike.ts'
import { aboutLine, inWords, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownThickness } from '../shown.ts'

/** A hand can't grip rope thinner than this, in metres, to put its weight on it. */
const thinnest = 0.012
const few = 2

/** Thin rope that a party is to haul. */
export const ropeTooThin: Rule = {
  slug: 'line/rope-too-thin',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig }) {
    // A tenth of a millimetre of grace: sizes said round are divided by pi.
    const thin = rig.lines.filter(
      ({ rope, hands }) => rope && rope.diameter < thinnest - 0.0001 && (hands ?? 0) > few,
    )
    for (const { at, first, others } of hungAlike(rig, thin)) {
      yield {
        at,
        message: `${sentence(first.words)} is ${shownThickness(rig, first.rope?.diameter ?? 0)} rope for ${inWords(first.hands ?? 0)} hands; rope under ${shownThickness(rig, thinnest)} is for ${inWords(few)} at most.${soOthers(others, others.length > 1 ? 'are' : 'is')}`,
        aboard: "Hands can't grip it, and it cuts them when it runs.",
        remedy: 'Reeve thicker rope, or more purchase and fewer hands.',
        about: [first, ...others].flatMap(aboutLine),
      }
    }
  },
}
