import { sparMaterials } from '../../reckon/index.ts'
import { nearest } from '../../text/index.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownThickness } from '../shown.ts'

/** A spar of a timber that has no weight here, or with walls that don't fit its thickness. */
export const sparMaterialUnknown: Rule = {
  slug: 'spar/material-unknown',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const { name, span, material, walls, diameter } of rig.spars) {
      if (material !== undefined && !sparMaterials.includes(material)) {
        const near = nearest(material, sparMaterials)
        yield {
          at: span,
          message: `${sentence(name)} is of "${material}", whose weight isn't known.`,
          aboard:
            'What it weighs is not reckoned, and so neither are the halyard, the lift and the hands for it.',
          remedy:
            near.length > 0
              ? `Say it as one of these: ${near.join(', ')}.`
              : `Say one that is known, as ${sparMaterials.slice(0, 3).join(', ')}; or give the spar's weight.`,
          about: [name],
        }
      }
      if (walls !== undefined && diameter !== undefined && !(walls > 0 && walls <= diameter / 2))
        yield {
          at: span,
          message: `${sentence(name)} is ${shownThickness(rig, diameter)} thick, and can't have walls of ${shownThickness(rig, walls)}.`,
          aboard: 'What it weighs is not reckoned.',
          remedy: 'Check the two measures.',
          about: [name],
        }
    }
  },
}
