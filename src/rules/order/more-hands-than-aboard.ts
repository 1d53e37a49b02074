import type { OrderPhase } from '../../evolve/index.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { handsOf, phaseName, phasesOf } from './phases.ts'

/** A phase that takes more hands than the vessel has. */
export const moreHandsThanAboard: Rule = {
  slug: 'order/more-hands-than-aboard',
  severity: 'error',
  judges: 'vessels',
  *judge(ship) {
    const inAll = ship.rig.vessel.handsInAll
    if (inAll === undefined) return
    for (const said of phasesOf(ship)) {
      const wanted = handsIn(said.phase)
      if (wanted === undefined || wanted <= inAll) continue
      yield {
        at: said.at,
        message: `${sentence(phaseName(said))} takes ${wanted} hands, and she has ${inAll} in all.`,
        aboard: 'Lines stand unmanned that have to be worked at once.',
        remedy:
          'Part it into two phases, give the heavy lines more purchase, or check the hands of each line.',
        about: [said.sail.name],
        explains: [handsOf(said)],
      }
    }
  },
}

/** Hands on the lines and aloft together; undefined where a line's are not known. */
function handsIn({ hands }: OrderPhase): number | undefined {
  return hands.hauling.known ? hands.hauling.value + hands.easing + hands.aloft : undefined
}
