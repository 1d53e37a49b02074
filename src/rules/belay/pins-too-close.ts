import { pitch } from '../../rig/index.ts'
import { aboutRail, railName, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownGap } from '../shown.ts'

/** Coils foul each other below this, in metres. */
const closest = 0.16

/** A rail whose pins stand closer together than coils can hang. */
export const pinsTooClose: Rule = {
  slug: 'belay/pins-too-close',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const told = new Set<string>()
    for (const rail of rig.rails) {
      const apart = pitch(rail)
      // On a band round the mast, and where all places are said at one point, they aren't measured one by one; a rail from a point to the
      // same has two. Half a millimetre of grace: positions come from dividing a rail's length.
      const isMeasured = rail.lie !== 'round' && rail.first !== rail.last
      if (apart === undefined || !isMeasured || apart >= closest - 0.0005 || told.has(rail.mark)) continue
      told.add(rail.mark)
      const name = rail.mirrored ? `${rail.name}, port and starboard,` : railName(rail)
      yield {
        at: rail.span,
        message: `${sentence(name)} has its pins ${shownGap(rig, apart)} apart; coils need ${shownGap(rig, closest)}.`,
        aboard: 'Coils foul one another, and fingers are caught between the pins.',
        remedy: 'Check the ends of the rail and the count of its pins, or spread them over a longer rail.',
        about: aboutRail(rail),
      }
    }
  },
}
