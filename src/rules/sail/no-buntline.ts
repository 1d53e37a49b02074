import type { SquareSail } from '../../rig/index.ts'
import { gathers } from '../deeds.ts'
import { gearOf } from '../gear.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** Small enough to be smothered by hand. */
const maySpare: readonly SquareSail['class'][] = ['royal', 'skysail']

/** A square sail without buntlines. */
export const noBuntline: Rule = {
  slug: 'sail/no-buntline',
  severity: 'warning',
  judges: 'vessels',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      if (sail.kind !== 'square' || maySpare.includes(sail.class)) continue
      const lines = gear.ofSail(sail)
      if (lines.length === 0 || lines.some(gathers)) continue
      yield {
        at: sail.span,
        message: `${sentence(sail.name)} has no buntlines.`,
        aboard:
          'With its clews up the body of the sail still holds wind, over the heads of those who furl it.',
        remedy: 'Give it a pair that "gathers foot". Royals and smaller may do without.',
        about: [sail.name],
        follows: [sail.name],
      }
    }
  },
}
