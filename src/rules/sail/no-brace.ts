import { swingsYard } from '../deeds.ts'
import { gearOf, squareYardsOf } from '../gear.ts'
import { manyAsOne } from '../many-as-one.ts'
import { inWords, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** A square yard that nothing swings. */
export const noBrace: Rule = {
  slug: 'sail/no-brace',
  severity: 'error',
  judges: 'vessels',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const yard of squareYardsOf(rig)) {
      if (gear.ofSpar(yard).some(swingsYard)) continue
      const carries = rig.sails.find(sail => sail.kind === 'square' && sail.yard === yard.name)
      yield {
        at: yard.span,
        message: `${sentence(yard.name)} has no braces.`,
        aboard: "The yard can't be trimmed to the wind, nor held still for hands to lay out on it.",
        remedy: 'Give it, or its sail, a pair that "swings yard against other brace".',
        about: [yard.name, ...(carries ? [carries.name] : [])],
        follows: [yard.name, ...(carries ? [carries.name] : [])],
      }
    }
  },
  together: drafts =>
    manyAsOne(drafts, {
      slips: 2,
      nameOf: ({ about: [yard = ''] }) => yard,
      nor: others => `Nor have ${inWords(others.length)} other yards`,
    }),
}
