import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** A sail wider at the foot than the yard its clews are sheeted to. */
export const footWiderThanYard: Rule = {
  slug: 'sail/foot-wider-than-yard',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const sail of rig.sails) {
      if (sail.kind !== 'square' || !sail.foot || !sail.footYard) continue
      const yard = rig.sparAt.get(sail.footYard)
      if (!yard?.length || sail.foot.width <= yard.length) continue
      yield {
        at: sail.span,
        message: `${sentence(sail.name)} is ${shownLength(rig, sail.foot.width)} wide at the foot, and the ${yard.name} it is sheeted to is ${shownLength(rig, yard.length)} long.`,
        aboard: "The clews can't be sheeted home: the sheet sheaves stand inside them.",
        remedy: 'One of the two figures is wrong, or the sail is sheeted to another yard.',
        related: [{ at: yard.span, message: `the ${yard.name} is said here` }],
        about: [sail.name, yard.name],
      }
    }
  },
}
