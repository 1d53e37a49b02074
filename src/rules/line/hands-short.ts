import { showForce } from '../../measure/index.ts'
import { hungAlike, soOthers } from '../hung-alike.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { speaksFeet } from '../shown.ts'

/** A line that takes more hands than the vessel has. */
export const handsShort: Rule = {
  slug: 'line/hands-short',
  severity: 'warning',
  judges: 'vessels',
  *judge({ rig, figures }) {
    const inAll = rig.vessel.handsInAll
    if (inAll === undefined) return
    const loads = figures.loads()
    const heavy = rig.lines.filter(line => {
      const hands = loads.get(line.address)?.hands
      return hands?.known && hands.value > inAll
    })
    for (const { at, first, others } of hungAlike(rig, heavy)) {
      const { pull, hands } = loads.get(first.address) ?? {}
      if (!pull?.known || !hands?.known) continue
      yield {
        at,
        message: `${sentence(first.words)} takes a pull of ${showForce(pull.value, speaksFeet(rig) ? 'lbf' : 'kN')}, ${hands.value} hands, and she has ${inAll} in all.${soOthers(others, others.length > 1 ? 'do' : 'does')}`,
        aboard: 'The sail is neither set nor got in when it has to be.',
        remedy: 'Reeve more purchase, clap on a jigger, or lead the fall to a capstan or a winch.',
        about: [first, ...others].flatMap(aboutLine),
      }
    }
  },
}
