import { sheetsClew } from '../deeds.ts'
import { gearOf, isShackled } from '../gear.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { whereHung } from '../where.ts'

/** A sail with running sheets whose clews are shackled as well. */
export const sheetedAndShackled: Rule = {
  slug: 'sail/sheeted-and-shackled',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      const sheet = gear.ofSail(sail).find(sheetsClew)
      if (sail.kind !== 'square' || !sheet || !isShackled(sail, 'clew')) continue
      yield {
        at: whereHung(rig, sheet),
        message: `${sentence(sail.name)} has its clews shackled and a running sheet as well.`,
        aboard: "A shackled clew can't be clewed up: the sheet has nothing to let go.",
        remedy: 'Leave out the one she doesn\'t have: "without sheet", or the line "clews shackled to ...".',
        related: [{ at: sail.span, message: `the ${sail.name} is said here` }],
        about: [sail.name],
      }
    }
  },
}
