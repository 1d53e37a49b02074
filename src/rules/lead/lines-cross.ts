import { aboutLine, bothSubject, lineName, pairName, sentence, subject } from '../naming.ts'
import { onceAPair } from '../once-a-pair.ts'
import { berthOf } from '../pairs.ts'
import type { Rule } from '../rule.ts'
import { howNear, shownGap, shownLength } from '../shown.ts'

/** Lines that pass across each other nearer than this, in metres, from rope to rope, saw at each other. */
const clearance = 0.05

/** Two running lines that cross between their pins and their last blocks, so near that they chafe. */
export const linesCross: Rule = {
  slug: 'lead/lines-cross',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig, figures }) {
    const { crossings, braced } = figures.fouls()
    const all = [
      ...crossings.map(one => ({ ...one, when: '' })),
      ...braced.crossings.map(one => ({ ...one, when: ' with the yards braced sharp' })),
    ]
    const near = all.filter(({ clear }) => clear < clearance)
    const key = ({ line, other, when }: (typeof near)[number]) => `${line.pairKey} ${other.pairKey}${when}`
    for (const { first, isTwice } of onceAPair(near, key)) {
      const { line, other, clear, at, when } = first
      const [crosses, crossed] = isTwice
        ? [bothSubject(line), other.pair ? pairName(other) : other.words]
        : [subject(line), lineName(other)]
      yield {
        at: line.belaySpan ?? line.span,
        message: `${sentence(crosses)} crosses the ${crossed}${when}, ${howNear(rig, clear)}, ${shownLength(rig, at.z)} above the waterline; running lines that cross need ${shownGap(rig, clearance)} between them.`,
        aboard: 'The one that runs saws at the one that bears.',
        remedy: 'Change their pins, shift a block, or lead one of them through a fairlead that holds it off.',
        related: [{ at: other.belaySpan ?? other.span, message: `the ${subject(other)} is led from here` }],
        about: [...aboutLine(line), ...aboutLine(other)],
        follows: [berthOf(line), berthOf(other)],
      }
    }
  },
}
