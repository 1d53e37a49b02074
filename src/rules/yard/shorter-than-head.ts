import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** A yard shorter than the head of the sail bent to it. */
export const shorterThanHead: Rule = {
  slug: 'yard/shorter-than-head',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const sail of rig.sails) {
      if (sail.kind !== 'square' || !sail.head) continue
      const yard = rig.sparAt.get(sail.yard)
      if (!yard?.length || sail.head.width <= yard.length) continue
      yield {
        at: sail.span,
        message: `${sentence(sail.name)} is ${shownLength(rig, sail.head.width)} wide at the head, and the ${yard.name} is ${shownLength(rig, yard.length)} long.`,
        aboard: "The head can't be hauled out to its earings.",
        remedy:
          'One of the two figures is wrong; a yardarm stands out 3 to 5 % of the yard beyond the head at each end.',
        related: [{ at: yard.span, message: `the ${yard.name} is said here` }],
        about: [sail.name, yard.name],
      }
    }
  },
}
