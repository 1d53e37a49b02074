import { hoistsPeak, hoistsThroat } from '../deeds.ts'
import { gearOf } from '../gear.ts'
import { aboutLine, placeName, sentence } from '../naming.ts'
import { isBelayed } from '../pairs.ts'
import type { Rule } from '../rule.ts'

/** Throat and peak halyard of one gaff on the same side of the mast. */
export const throatAndPeakOneSide: Rule = {
  slug: 'sail/throat-and-peak-one-side',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      const lines = gear.ofSail(sail).filter(isBelayed)
      const throat = lines.find(hoistsThroat)
      const peak = lines.find(line => hoistsPeak(line) && line !== throat)
      if (!throat || !peak || throat.belay.side !== peak.belay.side || throat.belay.side === 'centre')
        continue
      yield {
        at: peak.belaySpan ?? peak.span,
        message: `${sentence(sail.name)} has throat and peak halyard both to ${peak.belay.side}: ${placeName(rig, throat.belay)} and ${placeName(rig, peak.belay)}.`,
        aboard:
          "The two are hoisted together; two parties on one side are in each other's way, and the gaff goes up askew.",
        remedy: 'Lead one to each side of the mast, and alike on every mast.',
        related: [{ at: throat.belaySpan ?? throat.span, message: 'the throat halyard is belayed here' }],
        about: [sail.name, ...aboutLine(throat), ...aboutLine(peak)],
      }
    }
  },
}
