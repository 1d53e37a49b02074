import type { Order, OrderRow } from '../../evolve/index.ts'
import { type Line, phaseKey, type Rig } from '../../rig/index.ts'
import { steadiesMast } from '../deeds.ts'
import { gearOf } from '../gear.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { whereHung } from '../where.ts'

/** A boom sail with running backstays in its gear whose setting never frees the lee one. */
export const leeBackstayKept: Rule = {
  slug: 'order/lee-backstay-kept',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig, evolutions }) {
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      const set = evolutions.ordersAt.get(sail.name)?.set
      const backstay = gear.on(sail.name).find(line => line.pair && steadiesMast(line))
      if (!set || !backstay || freesLeeOne(rig, set, backstay)) continue
      const said = sail.toSet?.span
      yield {
        at: said?.source === sail.span.source ? said : sail.span,
        message: `${sentence(`setting the ${sail.name}`)} never lets go the lee ${backstay.kind}: both are left set up.`,
        aboard: "The boom brings up on the lee one and can't go out; in a gybe it carries the backstay away.",
        remedy: `Ease or let go the lee ${backstay.kind} before the sail is trimmed, and haul it again in dousing.`,
        related: [{ at: whereHung(rig, backstay), message: `the ${backstay.words} is said here` }],
        about: [sail.name, ...(sail.toSet?.phases.map(phaseKey) ?? []), ...aboutLine(backstay)],
      }
    }
  },
}

/** Whether the last thing done with the lee one, or with both, is to free it. */
function freesLeeOne(rig: Rig, { phases }: Order, { pairKey }: Line): boolean {
  const isLee = (row: OrderRow) =>
    row.reach !== 'weather' &&
    row.lines.starboard.some(address => rig.lineAt.get(address)?.pairKey === pairKey)
  const dealt = phases.flatMap(({ haul, ease, hold }) => [...haul, ...hold, ...ease].filter(isLee))
  const last = dealt.at(-1)?.act
  return last === 'ease' || last === 'let go'
}
