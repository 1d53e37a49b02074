import { hoistsYard, lowersYard, raisesClew } from '../deeds.ts'
import { gearOf, squareYardsOf } from '../gear.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { takingIn } from '../sail/nothing-gets-it-in.ts'
import { whereHung } from '../where.ts'

/** A hoisting yard that neither downhauls nor clewlines can bring down. */
export const nothingGetsItDown: Rule = {
  slug: 'yard/nothing-gets-it-down',
  severity: 'error',
  judges: 'vessels',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const yard of squareYardsOf(rig)) {
      const lines = gear.ofSpar(yard)
      const comesDown = lines.some(lowersYard) || lines.some(raisesClew)
      const halyard = lines.find(hoistsYard)
      if (!yard.hoists || comesDown || !halyard) continue
      const sails = rig.sails
        .filter(sail => sail.kind === 'square' && sail.yard === yard.name)
        .map(sail => sail.name)
      yield {
        at: yard.span,
        message: `${sentence(yard.name)} has a halyard, and neither downhauls nor clewlines to bring it down.`,
        aboard:
          "With wind in the sail the yard jams on its mast, and its weight alone doesn't bring it down.",
        remedy: 'Give its sail a pair that "lowers yard", or a pair that "raises clew".',
        related: [{ at: whereHung(rig, halyard), message: `the ${halyard.words} is said here` }],
        about: [yard.name, ...sails],
        explains: sails.map(takingIn),
        follows: [yard.name, ...sails],
      }
    }
  },
}
