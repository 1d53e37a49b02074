import { aboutLine, bothSubject, sentence, subject } from '../naming.ts'
import { onceAPair } from '../once-a-pair.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** More than this share of what is needed lies about the deck. */
const longest = 1.3

/** A line cut much longer than its lead asks for. */
export const cutLong: Rule = {
  slug: 'line/cut-long',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig, figures }) {
    const cut = rig.lines.filter(line => line.cut !== undefined)
    if (cut.length === 0) return
    const long = cut.flatMap(line => {
      const length = figures.leads().get(line.address)?.length
      if (!length?.known || line.cut === undefined) return []
      return line.cut > longest * length.value ? [{ line, cut: line.cut, need: length.value }] : []
    })
    for (const { first, isTwice } of onceAPair(long, ({ line }) => line.pairKey)) {
      const { line, cut, need } = first
      yield {
        at: line.span,
        message: `${sentence(isTwice ? bothSubject(line) : subject(line))} is cut to ${shownLength(rig, cut)}; its lead asks for ${shownLength(rig, need)}.`,
        aboard: 'The coil buries its neighbours, and its end is in the scuppers.',
        remedy: 'Cut it down, or check the lead and the travel.',
        about: aboutLine(line),
      }
    }
  },
}
