import { type Figure, known, type Metres, metres, onceKnown, unknown } from '../../measure/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import { cornerEnds } from './corner.ts'
import { type Ends, hoistingYard, isSwung, unsaid } from './load.ts'
import { swingEnds } from './swing.ts'
import { distance } from './vector.ts'
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
      return deed.object === 'yard'
        ? onceKnown(hoistOf(line, rig), drop => known(nearer(last, drop)))
        : known(nearer(last, travel ?? last))
    case 'hoists':
      return hoisted(line, last, rig)
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

/** A corner hauled out or down to where it is set; told home. */
function spread(line: Line, last: Metres, rig: Rig): Figure<Ends> {
  return line.travel === undefined ? cornerEnds(line, last, rig) : known(further(last, line.travel))
}

/** A halyard, told with its load lowered; or hoisted, where its lead ends at the very place of the load set. */
function hoisted(line: Line, last: Metres, rig: Rig): Figure<Ends> {
  const end = line.lead.at(-1)?.at
  const set = end && setPlace(line, rig)
  const away = set && distance(set, end)
  const isToldSet = away !== undefined && away <= atItsPlace
  const travel = line.travel === undefined ? hoistOf(line, rig, away) : known(line.travel)
  return onceKnown(travel, t => known(isToldSet ? further(last, t) : nearer(last, t)))
}

/** A lead that ends within a metre of where its load is set is told with the load set. */
const atItsPlace = 1

/** Where the load of a halyard stands when the sail is set. */
function setPlace(line: Line, rig: Rig) {
  if (line.deed?.object === 'yard') return hoistingYard(line, rig)?.at
  const sail = line.host?.kind === 'sail' ? rig.sailAt.get(line.host.name) : undefined
  return sail?.kind === 'fore-and-aft'
    ? sail.corners.find(one => one.name === line.deed?.object)?.at
    : undefined
}

/** How far a halyard's or a downhaul's load goes up and down. */
function hoistOf(line: Line, rig: Rig, away?: number): Figure<Metres> {
  if (line.deed?.object === 'yard') {
    const { at, loweredHeight } = hoistingYard(line, rig) ?? {}
    if (!at || loweredHeight === undefined) return unknown('How far its yard hoists is not given.')
    return known(metres(at.z - loweredHeight))
  }
  const isCorner = line.deed?.object === 'head' || line.deed?.object === 'throat'
  if (isCorner && away !== undefined && away > atItsPlace) return known(metres(away))
  return unknown(unsaid(line))
}
