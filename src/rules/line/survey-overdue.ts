import { isBefore } from '../../rig/index.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownDay } from '../shown-day.ts'
import { whereHung } from '../where.ts'

/** A line that was to be looked at again before the day of the papers' revision. */
export const surveyOverdue: Rule = {
  slug: 'line/survey-overdue',
  severity: 'warning',
  judges: 'vessels',
  *judge({ rig }) {
    const { revision } = rig.vessel
    if (!revision) return
    for (const [line] of rig.pairAt.values()) {
      const due = line?.survey?.due
      if (!line || !due || line.lifted !== undefined || !isBefore(due, revision)) continue
      yield {
        at: whereHung(rig, line),
        message: `${sentence(line.words)} was to be surveyed again by ${shownDay(due)}, and the papers are of ${shownDay(revision)}.`,
        aboard: 'Rope that looked sound a season ago may be rotten at the heart.',
        remedy: 'Survey it, and say so on a page "survey"; or lift it.',
        about: aboutLine(line),
      }
    }
  },
}
