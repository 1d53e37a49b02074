import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownDay } from '../shown-day.ts'
import { whereHung } from '../where.ts'

/** A line that a survey has condemned, and that is still belayed. */
export const condemned: Rule = {
  slug: 'line/condemned',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const lines of rig.pairAt.values()) {
      const [line] = lines.filter(({ belay }) => belay)
      if (line?.survey?.condition !== 'condemned') continue
      const { day, by, note } = line.survey
      yield {
        at: whereHung(rig, line),
        message: `${sentence(line.words)} was condemned on ${shownDay(day)}${by ? ` by ${by}` : ''}${note ? `: ${note}` : ''}, and is still rove.`,
        aboard: 'It parts under load, and whoever trusts it is hurt.',
        remedy: 'Reeve a new one and survey it, or say on a page "lifted" that it is sent down.',
        about: aboutLine(line),
      }
    }
  },
}
