import { drawsClewForward } from '../deeds.ts'
import { gearOf, isShackled } from '../gear.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** A course without tacks. */
export const noTack: Rule = {
  slug: 'sail/no-tack',
  severity: 'error',
  judges: 'vessels',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      if (sail.kind !== 'square' || sail.class !== 'course') continue
      const lines = gear.ofSail(sail)
      const isHeld = isShackled(sail, 'clew') || isShackled(sail, 'tack') || lines.some(drawsClewForward)
      if (lines.length === 0 || isHeld) continue
      yield {
        at: sail.span,
        message: `${sentence(sail.name)} has no tack: nothing hauls its weather clew forward.`,
        aboard: "On the wind its weather leech can't be held down and forward, and the sail only shakes.",
        remedy: 'Give it a pair that "draws clew forward".',
        about: [sail.name],
        follows: [sail.name],
      }
    }
  },
}
