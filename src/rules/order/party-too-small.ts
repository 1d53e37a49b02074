import { inWords, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { handsOf, phaseName, phasesOf } from './phases.ts'

/** A phase that asks more of a station than its hands, and all that others can lend, come to. */
export const partyTooSmall: Rule = {
  slug: 'order/party-too-small',
  severity: 'warning',
  judges: 'vessels',
  *judge(ship) {
    const { rig } = ship
    for (const said of phasesOf(ship)) {
      for (const { station, hauling, easing, short, inAll } of said.phase.hands.stations) {
        if (short === 0 || !hauling.known) continue
        const named = rig.stationAt.get(station)
        yield {
          at: said.at,
          message: `${sentence(phaseName(said))} asks ${hauling.value + easing} hands of the ${station}, which has ${inAll}; with all that other stations can lend, ${inWords(short)} ${short === 1 ? 'is' : 'are'} wanting.`,
          aboard: 'One hand would have two lines to work at once, and lets one of them go.',
          remedy:
            'Part it into two phases, reeve more purchase, or take the line to a jigger or the capstan.',
          related: named ? [{ at: named.span, message: `the ${station} is said here` }] : [],
          about: [said.sail.name, station],
          follows: [handsOf(said)],
        }
      }
    }
  },
}
