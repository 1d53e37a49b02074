import { gathersClew, raisesClew, sheetsClew } from '../deeds.ts'
import { gearOf } from '../gear.ts'
import { aboutLine, bothSubject, placeName, sentence, subject } from '../naming.ts'
import { isBelayed } from '../pairs.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'
import { farPairs, reachOf } from './far.ts'

/** The two lines of one clew are worked as one by hands who see each other: within so many metres. */
const farthest = 6

/** Clewline and sheet of one clew too far apart. A course's are worked by hail, which reach/out-of-hail judges. */
export const clewApart: Rule = {
  slug: 'reach/clew-apart',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      if (sail.kind === 'square' && sail.class === 'course') continue
      const lines = gear.ofSail(sail).filter(isBelayed)
      const clewlines = lines.filter(line => raisesClew(line) || gathersClew(line))
      for (const apart of farPairs(clewlines, lines.filter(sheetsClew), farthest)) {
        const { line, other, amiss: far, onBothSides } = apart
        const name = onBothSides ? bothSubject(line) : subject(line)
        yield {
          at: line.belaySpan ?? line.span,
          message: `${sentence(name)} is ${shownLength(rig, far)} from its sheet; the two lines of a clew belong within ${shownLength(rig, farthest)} of each other.`,
          aboard: 'One is eased as the other is hauled, by hands who must see each other.',
          remedy: `Bring them nearer: the ${line.kind} is at the ${placeName(rig, line.belay)}, the sheet at the ${placeName(rig, other.belay)}.`,
          related: [{ at: other.belaySpan ?? other.span, message: 'the sheet is belayed here' }],
          about: [sail.name, ...aboutLine(line), ...aboutLine(other)],
          explains: [reachOf(apart)],
        }
      }
    }
  },
}
