import { topsBoom } from '../deeds.ts'
import { gearOf } from '../gear.ts'
import { manyAsOne, unfinished } from '../many-as-one.ts'
import { inWords, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** A boom with neither topping lift nor lazy jack. */
export const noToppingLift: Rule = {
  slug: 'boom/no-topping-lift',
  severity: 'warning',
  judges: 'vessels',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const spar of rig.spars) {
      if (spar.kind !== 'boom' || gear.ofSpar(spar).some(topsBoom)) continue
      const sails = rig.sails
        .filter(sail => sail.kind !== 'square' && sail.on.includes(spar.name))
        .map(sail => sail.name)
      yield {
        at: spar.span,
        message: `${sentence(spar.name)} has neither topping lift nor lazy jack.`,
        aboard: 'When its sail comes down the boom falls on the deck, or on whoever stands at the wheel.',
        remedy: 'Give its sail a pair that "tops boom against every sheet".',
        about: [spar.name, ...sails],
        follows: [spar.name, ...sails, ...(gear.ofSpar(spar).length === 0 ? [unfinished] : [])],
      }
    }
  },
  together: drafts =>
    manyAsOne(drafts, {
      slips: 2,
      nameOf: ({ about: [boom = ''] }) => boom,
      nor: others => `Nor have ${inWords(others.length)} others`,
    }),
}
