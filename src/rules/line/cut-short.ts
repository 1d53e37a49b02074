import { aboutLine, bothSubject, sentence, subject } from '../naming.ts'
import { onceAPair } from '../once-a-pair.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** Left on the pin with the load as far off as it goes, in metres: without it the end runs through the hands. */
const leastTail = 3

/** A line cut shorter than its lead asks for. */
export const cutShort: Rule = {
  slug: 'line/cut-short',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig, figures }) {
    const cut = rig.lines.filter(line => line.cut !== undefined)
    if (cut.length === 0) return
    const short = cut.flatMap(line => {
      const slack = figures.leads().get(line.address)?.slack
      if (!slack?.known || line.cut === undefined) return []
      const least = slack.value + leastTail
      return line.cut < least ? [{ line, cut: line.cut, least }] : []
    })
    for (const { first, isTwice } of onceAPair(short, ({ line }) => line.pairKey)) {
      const { line, cut, least } = first
      yield {
        at: line.span,
        message: `${sentence(isTwice ? bothSubject(line) : subject(line))} is cut to ${shownLength(rig, cut)}; its lead, with its load as far off as it goes, takes ${shownLength(rig, least)} with the end to belay.`,
        aboard: 'Its end runs out through the blocks when it is needed most.',
        remedy: 'Cut a longer one, or check the lead and the travel.',
        about: aboutLine(line),
      }
    }
  },
}
