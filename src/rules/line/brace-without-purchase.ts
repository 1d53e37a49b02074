import { velocityRatio, type Yard } from '../../rig/index.ts'
import { swingsYard } from '../deeds.ts'
import { gearOf, squareYardsOf } from '../gear.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'
import { whereHung } from '../where.ts'

/** Hands alone swing a lower yard up to so long, in metres. */
const byHands = 12

/** The lowest yard of a mast, a long one, braced without any purchase. */
export const braceWithoutPurchase: Rule = {
  slug: 'line/brace-without-purchase',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const yard of lowestOf(squareYardsOf(rig))) {
      if (!yard.length || yard.length <= byHands) continue
      const brace = gear.ofSpar(yard).find(line => swingsYard(line) && velocityRatio(line.purchase) === 1)
      if (!brace) continue
      yield {
        at: whereHung(rig, brace),
        message: `${sentence(brace.words)} is rove single, and the ${yard.name} it swings is ${shownLength(rig, yard.length)} long; without a purchase hands swing ${shownLength(rig, byHands)}.`,
        aboard: 'In a breeze the watch on deck can neither haul the yard round nor hold it.',
        remedy: 'Reeve the brace with a purchase, as in "rove pendant and gun".',
        related: [{ at: yard.span, message: `the ${yard.name} is said here` }],
        about: [yard.name, ...aboutLine(brace)],
      }
    }
  },
}

/** The yard that hangs lowest on each mast, where the text gives heights. */
function lowestOf(yards: readonly Yard[]): readonly Yard[] {
  const lowest = new Map<string, Yard & { readonly middle: NonNullable<Yard['middle']> }>()
  for (const yard of yards) {
    const { mast = '', middle } = yard
    const other = lowest.get(mast)
    if (middle && (!other || middle.z < other.middle.z)) lowest.set(mast, { ...yard, middle })
  }
  return [...lowest.values()]
}
