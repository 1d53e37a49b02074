import type { Line, Rail } from '../../rig/index.ts'
import { isHalyard } from '../deeds.ts'
import { aboutLine, aboutRail, listed, placeName, sentence, subject } from '../naming.ts'
import { isBelayed } from '../pairs.ts'
import type { Rule } from '../rule.ts'

/** So many pins from an end still count as the end. */
const ends = 3

/** A halyard in the middle of a rail, where a party has no room to walk away with it. */
export const halyardNotAtEnd: Rule = {
  slug: 'belay/halyard-not-at-end',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const line of rig.lines) {
      if (!isHalyard(line) || !isBelayed(line)) continue
      const rail = rig.railAt.get(line.belay.rail)
      if (!rail || isNearAnEnd(rail, line.belay.number)) continue
      yield {
        at: line.belaySpan ?? line.span,
        message: `${sentence(subject(line))} is at the ${placeName(rig, line.belay)} of ${rail.places.length}, more than ${ends} from either end.`,
        aboard: 'A halyard takes a whole party, who need clear deck beside it to walk away.',
        remedy: endsFree(rail, line),
        related: [{ at: rail.span, message: `the ${rail.name} is said here` }],
        about: [...aboutLine(line), ...aboutRail(rail)],
      }
    }
  },
}

const isNearAnEnd = (rail: Rail, number: number) => number <= ends || number > rail.places.length - ends

function endsFree(rail: Rail, line: Line): string {
  const free = rail.places.filter(place => place.lines.length === 0 && isNearAnEnd(rail, place.number))
  const pins = listed(free.map(({ pin }) => pin))
  return pins
    ? `Move it to an end of the rail, where ${free.length > 1 ? 'pins' : 'pin'} ${pins} ${free.length > 1 ? 'are' : 'is'} free.`
    : `Move it to an end of the rail, or say why it stays: allow belay/halyard-not-at-end for ${line.words} because ...`
}
