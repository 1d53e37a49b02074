import type { Sail } from '../../rig/index.ts'
import {
  drawsClewForward,
  gathers,
  getsHeadIn,
  isHalyard,
  lowersYard,
  raisesClew,
  sheetsBoom,
  sheetsClew,
} from '../deeds.ts'
import { gearOf } from '../gear.ts'
import { aboutLine, bothSubject, placeName, sentence, subject } from '../naming.ts'
import { type BelayedLine, isBelayed } from '../pairs.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'
import { farPairs, type Worked } from './far.ts'

/** A hail carries so far along a working deck, in metres. */
const hail = 25

/** Two lines worked together whose hands can't hear each other. */
export const outOfHail: Rule = {
  slug: 'reach/out-of-hail',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      const lines = gear.ofSail(sail).filter(isBelayed)
      for (const { line, other, amiss: far, onBothSides } of farApart(sail, lines)) {
        const isCourse = sail.kind === 'square' && sail.class === 'course'
        yield {
          at: line.belaySpan ?? line.span,
          ...(isCourse ? { severity: 'warning' } : {}),
          message: `${sentence(onBothSides ? bothSubject(line) : subject(line))} is ${shownLength(rig, far)} from the ${other.words}; a hail carries ${shownLength(rig, hail)}.`,
          aboard: "The two are worked together at the word of one hand, and the word doesn't reach.",
          remedy: `Bring them nearer, or post a hand between: one is at the ${placeName(rig, line.belay)}, the other at the ${placeName(rig, other.belay)}.`,
          related: [{ at: other.belaySpan ?? other.span, message: `the ${other.words} is belayed here` }],
          about: [sail.name, ...aboutLine(line), ...aboutLine(other)],
        }
      }
    }
  },
}

/** Halyard and downhaul; brails and sheet; and, of a course, the tack with sheet and clewgarnet, and those two. */
function farApart(sail: Sail, lines: readonly BelayedLine[]): readonly Worked<number>[] {
  const sheets = lines.filter(line => sheetsClew(line) || sheetsBoom(line))
  if (sail.kind === 'square' && sail.class === 'course') {
    const tacks = lines.filter(drawsClewForward)
    const clewgarnets = lines.filter(raisesClew)
    return [
      ...farPairs(tacks, sheets, hail),
      ...farPairs(clewgarnets, tacks, hail),
      ...farPairs(clewgarnets, sheets, hail),
    ]
  }
  const downhauls = lines.filter(line => lowersYard(line) || getsHeadIn(line))
  const brails = sail.kind === 'square' ? [] : lines.filter(gathers)
  return [...farPairs(lines.filter(isHalyard), downhauls, hail), ...farPairs(brails, sheets, hail)]
}
