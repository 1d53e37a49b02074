import type { StationHands } from '../../evolve/index.ts'
import type { Rig } from '../../rig/index.ts'
import { inWords, sentence } from '../naming.ts'
import type { Draft, Rule } from '../rule.ts'
import { aboutPhase, handsOf, otherPhases, phaseName, phasesOf, type SaidPhase } from './phases.ts'

/** Phases that ask more of a station than its hands, and all that others can lend, come to: told for the worst of them. */
export const partyTooSmall: Rule = {
  slug: 'order/party-too-small',
  severity: 'warning',
  judges: 'vessels',
  *judge(ship) {
    const short = new Map<string, Short[]>()
    for (const said of phasesOf(ship)) {
      for (const hands of said.phase.hands.stations) {
        if (hands.short === 0 || !hands.hauling.known) continue
        const asked = hands.hauling.value + hands.easing
        short.set(hands.station, [...(short.get(hands.station) ?? []), { said, hands, asked }])
      }
    }
    for (const list of short.values()) yield* undermanned(ship.rig, list)
  },
}

/** A phase that leaves a station short, and how many hands it asks of it. */
interface Short {
  readonly said: SaidPhase
  readonly hands: StationHands
  readonly asked: number
}

function* undermanned(rig: Rig, list: readonly Short[]): Iterable<Draft> {
  const [worst] = list.toSorted((a, b) => b.hands.short - a.hands.short)
  if (!worst) return
  const { said, asked } = worst
  const { station, short, inAll } = worst.hands
  const named = rig.stationAt.get(station)
  yield {
    at: said.at,
    message: `${sentence(phaseName(said))} asks ${asked} hands of the ${station}, which has ${inAll}; with all that other stations can lend, ${inWords(short)} ${short === 1 ? 'is' : 'are'} wanting.${otherPhases(list.length - 1, 'leave it short')}`,
    aboard: 'One hand would have two lines to work at once, and lets one of them go.',
    remedy: 'Part it into two phases, reeve more purchase, or take the line to a jigger or the capstan.',
    related: named ? [{ at: named.span, message: `the ${station} is said here` }] : [],
    about: [station, ...list.flatMap(one => aboutPhase(one.said))],
    follows: [handsOf(said)],
  }
}
