import { type Figure, known, type Metres, metres, unknown } from '../../measure/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import { type Ends, isSwung, unsaid } from './load.ts'
import { distance } from './vector.ts'

/**
 * Both ends of a corner that a line hauls out or down, told home. Eased, it goes where the lines that answer it
 * haul it: the furthest of their last leads from its own. A sheet must reach the clew when the clewline has it up.
 */
export function cornerEnds(line: Line, last: Metres, rig: Rig): Figure<Ends> {
  const [from, home] = [line.lead.at(-2)?.at, line.lead.at(-1)?.at]
  if (!from || !home || isSwung(line)) return unknown(unsaid(line))
  const places = line.counterparts.flatMap(address => {
    const other = rig.lineAt.get(address)
    return other && isAtSameCorner(line, other) ? (other.lead.at(-2)?.at ?? []) : []
  })
  const [furthest] = places.toSorted((a, b) => distance(from, b) - distance(from, a))
  if (!furthest) return unknown(unsaid(line))
  return known({
    home: last,
    slack: metres(Math.max(last, distance(from, furthest))),
    travel: metres(distance(home, furthest)),
  })
}

/** Whether two lines work one corner of one sail, and not its two corners on either side. */
function isAtSameCorner(line: Line, other: Line): boolean {
  const isOneSail = line.host !== undefined && line.host.name === other.host?.name
  const isOneSide = !line.side || !other.side || line.side === other.side
  return isOneSail && isOneSide && line.deed?.object === other.deed?.object && other.leadUnknown === undefined
}
