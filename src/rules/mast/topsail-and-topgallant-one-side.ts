import type { SquareSail } from '../../rig/index.ts'
import { byMast } from '../by-mast.ts'
import { gearOf } from '../gear.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { yardHalyards } from './yard-halyards.ts'

const topsails: readonly SquareSail['class'][] = ['topsail', 'upper topsail']
const topgallants: readonly SquareSail['class'][] = ['topgallant', 'upper topgallant']

/** Topsail and topgallant halyard of one mast on the same side. */
export const topsailAndTopgallantOneSide: Rule = {
  slug: 'mast/topsail-and-topgallant-one-side',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const halyards = yardHalyards(rig, gearOf(rig))
    const halyardsOf = byMast(halyards)
    for (const topsail of halyards.filter(one => topsails.includes(one.class))) {
      const topgallant = halyardsOf.get(topsail.mast)?.find(one => topgallants.includes(one.class))
      if (!topgallant || topgallant.line.belay.side !== topsail.line.belay.side) continue
      yield {
        at: topgallant.line.belaySpan ?? topgallant.line.span,
        message: `${sentence(topgallant.line.words)} comes to ${topgallant.line.belay.side}, the same side as the ${topsail.line.words}.`,
        aboard:
          'Two heavy halyards on one side are hoisted one after the other by the same party, and pull the masthead one way.',
        remedy: 'Lead one to each side of the deck.',
        related: [
          {
            at: topsail.line.belaySpan ?? topsail.line.span,
            message: `the ${topsail.line.words} is belayed here`,
          },
        ],
        about: [...aboutLine(topgallant.line), ...aboutLine(topsail.line)],
      }
    }
  },
}
