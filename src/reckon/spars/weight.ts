import {
  type Figure,
  type Kilograms,
  kilograms,
  known,
  type Metres,
  metres,
  unknown,
} from '../../measure/index.ts'
import type { Spar } from '../../rig/index.ts'
import { densityOf } from './timber.ts'

/** What a spar weighs: as the text says, else by its measures and what it is made of. `spars.md` has the formula. */
export function sparMass(spar: Spar, assumed: string): Figure<Kilograms> {
  if (spar.mass !== undefined && spar.mass > 0) return known(spar.mass)
  const length = sparLength(spar)
  if (length === undefined) return unknown(`The ${spar.name} is given neither its weight nor its length.`)
  if (spar.diameter === undefined)
    return unknown(`The ${spar.name} is given neither its weight nor its thickness.`)
  if (!(length > 0) || !(spar.diameter > 0)) return unknown(`The ${spar.name} has a measure of nothing.`)
  const material = spar.material ?? assumed
  const density = densityOf(material)
  if (!density.known) return density
  const { walls } = spar
  if (walls !== undefined && !(walls > 0 && walls <= spar.diameter / 2))
    return unknown(`The walls of the ${spar.name} don't fit its thickness.`)
  const section = (diameter: number) =>
    sectionOf(diameter, walls ?? (material === 'steel' ? diameter * steelWall : diameter / 2))
  const ends = section(spar.diameter * atTheEnds)
  const volume = taperedVolume(length, ends, section(spar.diameter), ends)
  return known(kilograms(volume * density.value))
}

/** Half as thick at the ends as in the middle (R. H. Dana Jr, The Seaman's Friend, 1847, ch. I, of yards). */
const atTheEnds = 1 / 2
/** A steel spar is a tube; its walls, where nothing is said, are a fortieth of its thickness all along: common practice, no source. */
const steelWall = 1 / 40

/** Volume of a spar by the areas of its sections at both ends and in the middle, by Simpson's rule. */
export const taperedVolume = (length: number, one: number, middle: number, other: number): number =>
  (length * (one + 4 * middle + other)) / 6

/** Section of the walls of a spar; of a solid one they meet in its middle. */
const sectionOf = (diameter: number, walls: number): number =>
  (Math.PI / 4) * (diameter ** 2 - Math.max(0, diameter - 2 * walls) ** 2)

/** Its length as said, or between its ends. */
export function sparLength(spar: Spar): Metres | undefined {
  if (spar.length !== undefined || spar.kind === 'yard') return spar.length
  const { inner, outer } = spar
  if (!inner || !outer) return undefined
  return metres(Math.hypot(outer.x - inner.x, outer.y - inner.y, outer.z - inner.z))
}
