import { hoistsYard } from '../deeds.ts'
import { gearOf, yardsOf } from '../gear.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { whereHung } from '../where.ts'

/** A halyard on a yard that is said to stay put. */
export const fixedHasHalyard: Rule = {
  slug: 'yard/fixed-has-halyard',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const yard of yardsOf(rig)) {
      const halyard = gear.ofSpar(yard).find(hoistsYard)
      if (yard.hoists || !halyard) continue
      yield {
        at: whereHung(rig, halyard),
        message: `${sentence(yard.name)} is fixed, and has a halyard: the ${halyard.words}.`,
        aboard: 'Orders and handbooks would send a party to hoist a yard that is held by its truss.',
        remedy: 'Say "hoists from ... to ..." of the yard, or "without halyard" of its gear.',
        related: [{ at: yard.span, message: 'the yard is said to be fixed here' }],
        about: [yard.name, ...aboutLine(halyard)],
        // That it has no place either follows.
        explains: halyard.belay ? [] : [halyard.address],
      }
    }
  },
}
