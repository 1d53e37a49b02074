import type { Point3 } from '../../measure/index.ts'
import type { Line, Rail, Rig } from '../../rig/index.ts'
import { aboutLine, aboutRail, railName, sentence, subject } from '../naming.ts'
import { onceAPair } from '../once-a-pair.ts'
import { berthOf } from '../pairs.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** Blocks that lie less out of order than this, in metres, leave the leads side by side. */
const least = 0.15
/** Lines that go to blocks further apart than this, in metres, go to different places, and pass each other on the way. */
const together = 3
/** A first lead less than this above its pin, in metres, goes along the rail and not aloft. */
const aloft = 2

/** Neighbours on a rail that go to one place aloft, and lie there the other way about. */
export const orderSwaps: Rule = {
  slug: 'lead/order-swaps',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const swaps = rig.rails.flatMap(rail => swapsOn(rail, rig))
    const key = ({ line, other }: Swap) => `${line.pairKey} ${other.pairKey}`
    for (const { first } of onceAPair(swaps, key)) {
      const { rail, line, other, back } = first
      yield {
        at: other.belaySpan ?? other.span,
        message: `${sentence(subject(line))} and the ${subject(other)} cross between the ${railName(rail)} and their blocks aloft, which lie ${shownLength(rig, back)} the other way about.`,
        aboard: 'They twist round each other, and a hand who follows one down comes to the pin of the other.',
        remedy: 'Let the two change pins.',
        related: [{ at: line.belaySpan ?? line.span, message: `the ${subject(line)} is belayed here` }],
        about: [...aboutRail(rail), ...aboutLine(line), ...aboutLine(other)],
        follows: [berthOf(line), berthOf(other)],
      }
    }
  },
}

interface Swap {
  readonly rail: Rail
  readonly line: Line
  readonly other: Line
  /** How far the first one's block lies beyond the second one's, along the rail. */
  readonly back: number
}

function swapsOn(rail: Rail, rig: Rig): readonly Swap[] {
  const { first, last } = rail
  // Round a mast there is no order along the rail.
  if (!first || !last || rail.lie === 'round') return []
  const length = Math.hypot(last.x - first.x, last.y - first.y)
  if (length === 0) return []
  const along = ({ x, y }: Point3) => (x * (last.x - first.x) + y * (last.y - first.y)) / length
  const led = rail.places.flatMap(place => place.lines.flatMap(address => firstLead(rig.lineAt.get(address))))
  return led.slice(1).flatMap(({ line: other, block }, i) => {
    const before = led[i]
    if (!before || before.line.pairKey === other.pairKey) return []
    const back = along(before.block) - along(block)
    return back >= least && spread(before.block, block) <= together
      ? [{ rail, line: before.line, other, back }]
      : []
  })
}

/** Where a line goes first, if that is aloft. */
function firstLead(line: Line | undefined): readonly { readonly line: Line; readonly block: Point3 }[] {
  const [pin, lead] = line?.lead ?? []
  if (!line || !pin || !lead || pin.what !== 'belay' || lead.at.z - pin.at.z < aloft) return []
  return [{ line, block: lead.at }]
}

const spread = (a: Point3, b: Point3): number => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)
