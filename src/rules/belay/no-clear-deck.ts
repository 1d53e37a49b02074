import type { Point3 } from '../../measure/index.ts'
import type { DeckThing, Rail, Rig } from '../../rig/index.ts'
import { isHalyard } from '../deeds.ts'
import { aboutLine, aboutRail, placeSubject, sentence, subject } from '../naming.ts'
import { berthOf, isBelayed } from '../pairs.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** Hands at a halyard stand on a piece of deck so deep before its pin, and so wide, in metres. */
const deep = 0.9
const wide = 0.6

/** A halyard with something on deck so close to its pin that its hands have nowhere to stand. */
export const noClearDeck: Rule = {
  slug: 'belay/no-clear-deck',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const line of rig.lines) {
      if (!isHalyard(line) || !isBelayed(line) || !line.belay.at) continue
      const rail = rig.railAt.get(line.belay.rail)
      const widest = rail && widestBefore(rig, rail, line.belay.at)
      if (!rail || !widest?.thing || widest.clear >= deep - 0.0005) continue
      const { clear, thing } = widest
      yield {
        at: line.belaySpan ?? line.span,
        message: `${sentence(subject(line))} has ${shownLength(rig, clear)} of clear deck before the ${placeSubject(rig, line.belay)}: the ${thing.name} stands there; a halyard takes ${shownLength(rig, deep)}.`,
        aboard:
          'Hands who can neither stand square to a halyard nor get past one another hoist late and belay badly.',
        remedy: `Belay it clear of the ${thing.name}, or allow it and say where its hands stand.`,
        related: [{ at: thing.span, message: `the ${thing.name} is here` }],
        about: [...aboutLine(line), ...aboutRail(rail), thing.name],
        follows: [berthOf(line)],
      }
    }
  },
}

/** How deep the deck is clear, in metres, and what ends it; without anything in the way, as deep as is asked for. */
interface Clear {
  readonly clear: number
  readonly thing?: DeckThing
}

/** The best of the ways in which hands may face a pin. */
function widestBefore(rig: Rig, rail: Rail, at: Point3): Clear {
  const ways = waysFrom(rail, at).map(way => clearAlong(rig.deck.filter(isInTheWay), at, way))
  return ways.reduce((best, one) => (one.clear > best.clear ? one : best))
}

/** Steps along and across the deck: away from the ship's side, or before and abaft a beam; all round a mast or a post. */
function waysFrom({ lie }: Rail, { y }: Point3): readonly (readonly [number, number])[] {
  const inboard = [0, y > 0 ? -1 : 1] as const
  switch (lie) {
    case 'port':
    case 'starboard':
      return [inboard]
    case 'athwart':
      return [
        [1, 0],
        [-1, 0],
      ]
    case 'centre':
    case 'round':
      return [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ]
  }
}

function clearAlong(things: readonly DeckThing[], at: Point3, [dx, dy]: readonly [number, number]): Clear {
  const half = wide / 2
  return things.reduce<Clear>(
    (best, thing) => {
      const [near, from, to] =
        dx === 0
          ? [dy > 0 ? thing.y0 - at.y : at.y - thing.y1, thing.x0 - at.x, thing.x1 - at.x]
          : [dx > 0 ? thing.x0 - at.x : at.x - thing.x1, thing.y0 - at.y, thing.y1 - at.y]
      const isBeside = from < half && to > -half
      return isBeside && near >= 0 && near < best.clear ? { clear: near, thing } : best
    },
    { clear: deep },
  )
}

/** A raised deck and a well are stood in, and a horse is stepped over. */
const isInTheWay = ({ kind }: DeckThing): boolean => !/deck|well|horse/.test(kind)
