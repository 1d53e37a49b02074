import type { OrderPhase } from '../../evolve/index.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { aboutPhase, handsOf, otherPhases, phaseName, phasesOf } from './phases.ts'

/** Phases that take more hands than the vessel has: told for the one that takes most. */
export const moreHandsThanAboard: Rule = {
  slug: 'order/more-hands-than-aboard',
  severity: 'error',
  judges: 'vessels',
  *judge(ship) {
    const { handsInAll: inAll, span } = ship.rig.vessel
    if (inAll === undefined) return
    const over = phasesOf(ship).flatMap(said => {
      const wanted = handsIn(said.phase)
      return wanted !== undefined && wanted > inAll ? [{ said, wanted }] : []
    })
    const [worst] = over.toSorted((a, b) => b.wanted - a.wanted)
    if (!worst) return
    yield {
      at: worst.said.at,
      message: `${sentence(phaseName(worst.said))} takes ${worst.wanted} hands, and she has ${inAll} in all.${otherPhases(over.length - 1, 'take more than she has')}`,
      aboard: 'Lines stand unmanned that have to be worked at once.',
      remedy: 'Part it into two phases, give the heavy lines more purchase, or check the hands of each line.',
      related: [{ at: span, message: `she is said to have ${inAll} hands here` }],
      about: over.flatMap(({ said }) => aboutPhase(said)),
      explains: over.map(({ said }) => handsOf(said)),
    }
  },
}

/** Hands on the lines and aloft together; undefined where a line's are not known. */
function handsIn({ hands }: OrderPhase): number | undefined {
  return hands.hauling.known ? hands.hauling.value + hands.easing + hands.aloft : undefined
}
