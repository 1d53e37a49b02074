import { type Figure, known, type Metres, metres, onceKnown, unknown } from '../../measure/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import { cornerEnds } from './corner.ts'
import { footOf, hoistOf, isToldSet } from './hoist.ts'
import { type Ends, isSwung, unsaid } from './load.ts'
import { boomEnds, swingEnds } from './swing.ts'
import type { Way } from './way.ts'

/**
 * Both ends of a load's travel. A text places a load once: a sail as it is set, a halyard's load as it is lowered.
 * Which end that is, and where the other one lies, follows from what a haul does; `leads.md` has the table.
 */
export function endsOf(line: Line, way: Way, rig: Rig): Figure<Ends> {
  const { deed, travel } = line
  const { last } = way
  if (!deed) return unknown('What it does is not said.')
  switch (deed.verb) {
    case 'raises':
    case 'gathers':
      return known(nearer(last, travel ?? last))
    case 'brings':
      return deed.direction === 'out' ? spread(line, last, rig) : known(nearer(last, travel ?? last))
    case 'lowers':
      return deed.object === 'head'
        ? known(nearer(last, travel ?? last))
        : onceKnown(hoistOf(line, rig), drop => known(nearer(last, drop)))
    case 'hoists':
      return onceKnown(hoistOf(line, rig), hoist =>
        known(isToldSet(line, rig) ? further(last, hoist) : nearer(last, hoist)),
      )
    case 'spreads':
    case 'draws':
      return spread(line, last, rig)
    case 'swings':
      return deed.object === 'yard' ? swingEnds(line, rig) : stated(line, t => between(last, t))
    case 'cocks':
      return stated(line, t => between(last, t))
    case 'tops':
      return stated(line, t => nearer(last, t))
    default:
      return stated(line, t => (isSwung(line) ? nearer(last, t) : further(last, t)))
  }
}

/** Told slack: hauling brings the load nearer by its travel. */
const nearer = (told: Metres, travel: Metres): Ends => ({
  home: metres(Math.max(0, told - travel)),
  slack: told,
  travel,
})

/** Told home: easing lets the load go further by its travel. */
const further = (told: Metres, travel: Metres): Ends => ({ home: told, slack: metres(told + travel), travel })

/** Told amidships or level: half the travel lies to each side. */
const between = (told: Metres, travel: Metres): Ends => ({
  home: metres(Math.max(0, told - travel / 2)),
  slack: metres(told + travel / 2),
  travel,
})

const stated = (line: Line, ends: (travel: Metres) => Ends): Figure<Ends> =>
  line.travel === undefined ? unknown(unsaid(line)) : known(ends(line.travel))

/** A corner hauled out or down to where it is set, or a boom hauled in; told home. */
function spread(line: Line, last: Metres, rig: Rig): Figure<Ends> {
  if (line.travel !== undefined) return known(further(last, line.travel))
  if (isSwung(line)) return boomEnds(line, last, rig)
  const foot = footOf(line, rig)
  return foot === undefined ? cornerEnds(line, last, rig) : known(further(last, foot))
}
