import { type Point3, point3 } from '../../measure/index.ts'
import { lowestWithin } from '../../reckon/index.ts'
import type { BelayingPoint, DeckThing, Rig } from '../../rig/index.ts'
import { deckBelow } from '../deck-below.ts'
import { gathersClew, raisesClew, sheetsClew } from '../deeds.ts'
import { gearOf } from '../gear.ts'
import { aboutLine, bothSubject, placeName, sentence, subject } from '../naming.ts'
import { isBelayed } from '../pairs.ts'
import type { Rule } from '../rule.ts'
import { reachOf, workedTogether } from './far.ts'

/** The eyes of a hand at a pin are so far above the deck, in metres. */
const eyes = 1.6

/** Clewline and sheet of one clew with a house or the like between their hands. A course's are worked by hail. */
export const outOfSight: Rule = {
  slug: 'reach/out-of-sight',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    if (rig.deck.length === 0) return
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      if (sail.kind === 'square' && sail.class === 'course') continue
      const lines = gear.ofSail(sail).filter(isBelayed)
      const clewlines = lines.filter(line => raisesClew(line) || gathersClew(line))
      const hidden = workedTogether(clewlines, lines.filter(sheetsClew), (line, other) =>
        between(rig, line.belay, other.belay),
      )
      for (const one of hidden) {
        const { line, other, amiss: thing, onBothSides } = one
        yield {
          at: line.belaySpan ?? line.span,
          message: `${sentence(onBothSides ? bothSubject(line) : subject(line))} is out of sight of its sheet: the ${thing.name} stands between the ${placeName(rig, line.belay)} and the ${placeName(rig, other.belay)}.`,
          aboard: 'One is eased as the other is hauled, by hands who must see each other.',
          remedy:
            'Bring both to one side of it, or post a hand who sees the two, and allow it with that reason.',
          related: [
            { at: other.belaySpan ?? other.span, message: 'the sheet is belayed here' },
            { at: thing.span, message: `the ${thing.name} is here` },
          ],
          about: [sail.name, thing.name, ...aboutLine(line), ...aboutLine(other)],
          follows: [reachOf(one)],
        }
      }
    }
  },
}

/** What on deck hides the hands at two places from each other; undefined where nothing does, or they aren't measured. */
function between(rig: Rig, a: BelayingPoint, b: BelayingPoint): DeckThing | undefined {
  const [from, to] = [eyesAt(rig, a), eyesAt(rig, b)]
  if (!from || !to) return undefined
  return rig.deck.find(
    thing => isScreen(thing) && (lowestWithin({ from, to }, thing)?.z ?? thing.top) < thing.top,
  )
}

function eyesAt(rig: Rig, { at }: BelayingPoint): Point3 | undefined {
  const deck = at && deckBelow(at.z, rig)
  return at && deck !== undefined ? point3(at.x, at.y, deck + eyes) : undefined
}

/** A raised deck is stood upon; past a horse, a wheel or a tiller one sees. */
const isScreen = ({ kind }: DeckThing): boolean => !/deck|horse|helm/.test(kind)
