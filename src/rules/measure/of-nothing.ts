import { hungAlike, soOthers } from '../hung-alike.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** A spar without length or thickness, or a rope without thickness, as said: nothing can be reckoned of it. */
export const ofNothing: Rule = {
  slug: 'measure/of-nothing',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const { name, span, length, diameter } of rig.spars) {
      if (length !== 0 && diameter !== 0) continue
      const what = length === 0 ? 'length' : 'thickness'
      yield {
        at: span,
        message: `${sentence(name)} is said to have no ${what}: neither its weight nor what hangs on it can be reckoned.`,
        aboard: 'A slip of the pen that nobody sees on the plan, and every figure of the spar is wrong.',
        remedy: `Say its ${what}, or leave it out.`,
        about: [name],
      }
    }
    for (const { at, first, others } of hungAlike(
      rig,
      rig.lines.filter(({ rope }) => rope?.diameter === 0),
    )) {
      yield {
        at,
        message: `${sentence(first.words)} is said to be of rope without thickness: neither its strength nor its weight can be reckoned.${soOthers(others, others.length > 1 ? 'are' : 'is')}`,
        aboard: 'Nobody can say what it bears, and no coil of it can be ordered.',
        remedy: 'Say how thick it is, or leave it out.',
        about: [first, ...others].flatMap(aboutLine),
      }
    }
  },
}
