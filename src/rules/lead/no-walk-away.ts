import type { Point3 } from '../../measure/index.ts'
import type { DeckThing, Rig } from '../../rig/index.ts'
import { aboutLine, inWords, placeSubject, sentence, subject } from '../naming.ts'
import { berthOf } from '../pairs.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** So many hands walk away with a line; fewer take it hand over hand. */
const party = 8
/** They walk beside the rail on a strip so wide and so far inboard of it, in metres. */
const strip = 0.6
const inboard = [0.4, 0.7, 1]

/** A heavy halyard whose party runs out of deck before the load is up. */
export const noWalkAway: Rule = {
  slug: 'lead/no-walk-away',
  severity: 'note',
  judges: 'vessels',
  *judge({ rig, figures }) {
    for (const line of rig.lines) {
      const pin = line.belay?.at
      if (line.deed?.verb !== 'hoists' || (line.hands ?? 0) < party || !pin || !line.belay) continue
      const hauled = figures.leads().get(line.address)?.hauled
      const run = longestRun(pin, rig)
      if (!hauled?.known || run === undefined || hauled.value <= run) continue
      yield {
        at: line.belaySpan ?? line.span,
        message: `${sentence(subject(line))} takes ${shownLength(rig, hauled.value)} of hauling by ${inWords(line.hands ?? 0)} hands, and at the ${placeSubject(rig, line.belay)} they have ${shownLength(rig, run)} of clear deck to walk away on.`,
        aboard: 'The party stops half way and holds the load while it shifts its hold.',
        remedy:
          'Lead the fall through a turning block along the deck, or say in the order where it is fleeted.',
        about: aboutLine(line),
        follows: [berthOf(line)],
      }
    }
  },
}

/** The longest way forward or aft from a pin, beside the rail, that nothing on deck stops; undefined where the ship's length is unknown. */
function longestRun({ x, y }: Point3, { deck, vessel }: Rig): number | undefined {
  const { waterline } = vessel
  if (waterline === undefined) return undefined
  const runs = inboard.flatMap(far => {
    const middle = Math.abs(y) < far ? y : y - Math.sign(y) * far
    const inTheWay = deck.filter(thing => isObstacle(thing) && isOnStrip(thing, middle))
    const forward = Math.max(0, ...inTheWay.filter(({ x1 }) => x1 <= x).map(({ x1 }) => x1))
    const aft = Math.min(waterline, ...inTheWay.filter(({ x0 }) => x0 >= x).map(({ x0 }) => x0))
    return [x - forward, aft - x]
  })
  return Math.max(...runs)
}

const isOnStrip = ({ y0, y1 }: DeckThing, middle: number): boolean =>
  y0 < middle + strip / 2 && y1 > middle - strip / 2

/** A hatch is walked over, and a horse stepped over; a raised deck ends the way. */
const isObstacle = ({ kind }: DeckThing): boolean => !/hatch|horse/.test(kind)
