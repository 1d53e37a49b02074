import { byMast } from '../by-mast.ts'
import { gearOf } from '../gear.ts'
import { aboutLine, placeName, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { yardHalyards } from './yard-halyards.ts'

/** Halyards of the same yard on two neighbouring masts led to one side. */
export const halyardsOneSide: Rule = {
  slug: 'mast/halyards-one-side',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const halyards = byMast(yardHalyards(rig, gearOf(rig)))
    for (const [index, mast] of rig.masts.entries()) {
      const next = rig.masts[index + 1]
      for (const first of halyards.get(mast.name) ?? []) {
        const second = halyards.get(next?.name ?? '')?.find(one => one.class === first.class)
        if (!second || second.line.belay.side !== first.line.belay.side) continue
        yield {
          at: second.line.belaySpan ?? second.line.span,
          message: `${sentence(second.line.words)} comes to ${second.line.belay.side}, like the ${first.line.words}: ${placeName(rig, second.line.belay)} and ${placeName(rig, first.line.belay)}.`,
          aboard: "The two can't be worked at once by two parties walking away along one side of the deck.",
          remedy: `Lead one of them to ${second.line.belay.side === 'port' ? 'starboard' : 'port'}, so that the sides change from mast to mast.`,
          related: [
            {
              at: first.line.belaySpan ?? first.line.span,
              message: `the ${first.line.words} is belayed here`,
            },
          ],
          about: [...aboutLine(second.line), ...aboutLine(first.line)],
        }
      }
    }
  },
}
