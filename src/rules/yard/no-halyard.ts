import { hoistsYard } from '../deeds.ts'
import { gearOf, yardsOf } from '../gear.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** A hoisting yard with nothing to hoist it. */
export const noHalyard: Rule = {
  slug: 'yard/no-halyard',
  severity: 'error',
  judges: 'vessels',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const yard of yardsOf(rig)) {
      if (!yard.hoists || gear.ofSpar(yard).some(hoistsYard)) continue
      const sails = rig.sails
        .filter(sail => sail.kind === 'square' && sail.yard === yard.name)
        .map(sail => sail.name)
      yield {
        at: yard.span,
        message: `${sentence(yard.name)} hoists, and has no halyard.`,
        aboard: "The yard can't be raised, and its sail can't be set.",
        remedy: 'Give its sail a line that "hoists yard"; or, where the yard stays put, say "fixed" of it.',
        about: [yard.name, ...sails],
        follows: [yard.name, ...sails],
      }
    }
  },
}
