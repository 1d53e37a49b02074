import { byMast } from '../by-mast.ts'
import { squareYardsOf } from '../gear.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** A yard longer than the next one below it. */
export const longerThanBelow: Rule = {
  slug: 'yard/longer-than-below',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const yardsOf = byMast(squareYardsOf(rig))
    for (const mast of rig.masts) {
      const yards = (yardsOf.get(mast.name) ?? [])
        .flatMap(yard =>
          yard.middle && yard.length ? [{ ...yard, z: yard.middle.z, length: yard.length }] : [],
        )
        .sort((a, b) => a.z - b.z)
      for (const [index, yard] of yards.entries()) {
        const below = yards[index - 1]
        if (!below || yard.length <= below.length) continue
        yield {
          at: yard.span,
          message: `${sentence(yard.name)} is ${shownLength(rig, yard.length)} long, longer than the ${below.name} below it, ${shownLength(rig, below.length)}.`,
          aboard:
            "Yards shorten upward; one that doesn't has sails that can't be sheeted to the yard below, or a figure that is wrong.",
          remedy: 'Check the two lengths.',
          related: [{ at: below.span, message: `the ${below.name} is said here` }],
          about: [yard.name, below.name],
        }
      }
    }
  },
}
