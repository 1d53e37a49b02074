import { aboutLine, bothSubject, sentence, subject } from '../naming.ts'
import { onceAPair } from '../once-a-pair.ts'
import { berthOf } from '../pairs.ts'
import type { Rule } from '../rule.ts'
import { howNear, shownGap, shownLength } from '../shown.ts'

/** A line that passes across a shroud or a stay nearer than this, in metres, from rope to rope, touches it at sea. */
const clearance = 0.05

/** A running line across a shroud, a backstay or a stay, with nothing that holds it off. */
export const chafesStanding: Rule = {
  slug: 'lead/chafes-standing',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig, figures }) {
    const { chafes, braced } = figures.fouls()
    const all = [
      ...chafes.map(one => ({ ...one, when: '' })),
      ...braced.chafes.map(one => ({ ...one, when: ' with the yards braced sharp' })),
    ]
    const near = all.filter(({ clear }) => clear < clearance)
    const key = ({ line, part, when }: (typeof near)[number]) => `${line.pairKey} ${part.part.name}${when}`
    for (const { first, isTwice } of onceAPair(near, key)) {
      const { line, part, clear, at, when } = first
      yield {
        at: line.belaySpan ?? line.span,
        message: `${sentence(isTwice ? bothSubject(line) : subject(line))} crosses the ${part.name}${when}, ${howNear(rig, clear)}, ${shownLength(rig, at.z)} above the waterline; a running line needs ${shownGap(rig, clearance)}.`,
        aboard: 'Every haul saws at wire or seizing, and the rope goes first.',
        remedy:
          'Lead it through a fairlead or a truck seized there, shift its block, or give it another pin.',
        related: [{ at: part.part.span, message: `the ${part.part.name} stands here` }],
        about: [...aboutLine(line), part.part.name],
        follows: [berthOf(line)],
      }
    }
  },
}
