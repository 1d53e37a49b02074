import { hoistsYard } from '../deeds.ts'
import { gearOf, yardsOf } from '../gear.ts'
import { manyAsOne } from '../many-as-one.ts'
import { inWords, sentence } from '../naming.ts'
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
        // Of a bare yard the braces are wanting as well, and all is told by one.
        explains: gear.ofSpar(yard).length === 0 ? [yard.name] : [],
        follows: [yard.name, ...sails],
      }
    }
  },
  together: drafts =>
    manyAsOne(drafts, {
      slips: 2,
      nameOf: ({ about: [yard = ''] }) => yard,
      nor: others => `Nor have ${inWords(others.length)} other yards that hoist`,
    }),
}
