import { type Figure, known, type Metres, metres, type Point3, point3, unknown } from '../../measure/index.ts'
import type { Boom, Line, Rig } from '../../rig/index.ts'
import { hoistingYard, unsaid } from './load.ts'
import { approachWithin } from './segment.ts'
import { between, beyond, distance } from './vector.ts'

/** A lead that ends within a metre of where its load is set is told with the load set. */
const atItsPlace = 1

/** Whether a halyard is told with its load set; most are told with it lowered. */
export function isToldSet(line: Line, rig: Rig): boolean {
  const end = line.lead.at(-1)?.at
  const set = end && setPlace(line, rig)
  return set !== undefined && end !== undefined && distance(set, end) <= atItsPlace
}

/** How far the load of a halyard or a downhaul goes up and down, as stated or by the places of its sail and spars. */
export function hoistOf(line: Line, rig: Rig): Figure<Metres> {
  if (line.travel !== undefined) return known(line.travel)
  switch (line.deed?.object) {
    case 'yard': {
      const { at, loweredHeight } = hoistingYard(line, rig) ?? {}
      return risen('yard', at, loweredHeight)
    }
    case 'gaff': {
      const { inner, loweredHeight } = gaffOf(line, rig) ?? {}
      return risen('gaff', inner, loweredHeight)
    }
    default:
      return cornerHoist(line, rig)
  }
}

function risen(spar: string, set: Point3 | undefined, lowered: Metres | undefined): Figure<Metres> {
  if (!set || lowered === undefined) return unknown(`How far its ${spar} hoists is not given.`)
  return set.z < lowered
    ? unknown(`Its ${spar} is told lower hoisted than lowered.`)
    : known(metres(set.z - lowered))
}

/** From where its lead ends to where it is set; told set, from there down to where it is lowered. */
function cornerHoist(line: Line, rig: Rig): Figure<Metres> {
  const end = line.lead.at(-1)?.at
  const set = setPlace(line, rig)
  const low = isToldSet(line, rig) ? loweredPlace(line, rig) : end
  return set && low ? known(metres(distance(set, low))) : unknown(unsaid(line))
}

/** A head comes down to its tack; a block on a gaff as far out as it stands on it, the gaff lowered and level. */
function loweredPlace(line: Line, rig: Rig): Point3 | undefined {
  if (line.deed?.object !== 'peak') return cornerOf(line, rig, 'tack')
  const block = line.lead.at(-1)?.at
  const { inner, loweredHeight } = gaffOf(line, rig) ?? {}
  if (!block || !inner || loweredHeight === undefined) return undefined
  return point3(inner.x + Math.hypot(block.x - inner.x, block.z - inner.z), block.y, loweredHeight)
}

/** How far a studdingsail's tack runs out along its boom: the length of its foot. */
export function footOf(line: Line, rig: Rig): Metres | undefined {
  const sail = line.host?.kind === 'sail' ? rig.sailAt.get(line.host.name) : undefined
  if (sail?.kind !== 'studdingsail' || line.deed?.object !== 'tack') return undefined
  const [tack, clew] = [cornerOf(line, rig, 'tack'), cornerOf(line, rig, 'clew')]
  return tack && clew && metres(distance(tack, clew))
}

/** Where the load of a halyard stands when the sail is set. */
function setPlace(line: Line, rig: Rig): Point3 | undefined {
  const object = line.deed?.object ?? ''
  if (object === 'yard') return hoistingYard(line, rig)?.at
  return object === 'peak' ? onGaff(line, rig) : cornerOf(line, rig, object)
}

function cornerOf(line: Line, rig: Rig, name: string): Point3 | undefined {
  const sail = line.host?.kind === 'sail' ? rig.sailAt.get(line.host.name) : undefined
  if (!sail || sail.kind === 'square') return undefined
  const corner = sail.corners.find(one => one.name === name)?.at
  return corner && point3(corner.x, line.side === 'port' ? -corner.y : corner.y, corner.z)
}

/**
 * A peak halyard is told to its block on the lowered gaff: as far out along it, that block stands on the gaff when set.
 * A block that is told on the gaff as set stands where it is told.
 */
function onGaff(line: Line, rig: Rig): Point3 | undefined {
  const block = line.lead.at(-1)?.at
  const { inner, outer, loweredHeight } = gaffOf(line, rig) ?? {}
  if (!block || !inner || !outer || loweredHeight === undefined) return cornerOf(line, rig, 'peak')
  const gaff = { from: inner, to: outer }
  if (approachWithin(atItsPlace, gaff, { from: block, to: block })) return block
  const out = Math.hypot(block.x - inner.x, block.z - loweredHeight)
  return beyond(inner, between(inner, outer), Math.min(1, out / distance(inner, outer)))
}

function gaffOf(line: Line, rig: Rig): Boom | undefined {
  const sail = line.host?.kind === 'sail' ? rig.sailAt.get(line.host.name) : undefined
  const names = sail?.kind === 'fore-and-aft' ? sail.on : []
  return names.map(name => rig.sparAt.get(name)).find((spar): spar is Boom => spar?.kind === 'gaff')
}
