import {
  type Figure,
  known,
  type Metres,
  type MetresPerSecond,
  type Radians,
  radians,
  unknown,
} from '../../measure/index.ts'
import type { Mast, Rig, Yard } from '../../rig/index.ts'
import { apparentWind, type ShipWind, windAt } from '../wind/index.ts'
import { type BraceLimit, limitOf, usualLimit } from './limit.ts'
import { danasFan, fanByRule } from './rule.ts'

/** A true wind 10 m above the sea, off the bow, and the ship's speed through it. */
export interface Course {
  readonly wind: ShipWind
  readonly ship: MetresPerSecond
}

/** How one yard stands on a course: by the rule of the handbooks, and as the wind alone would have it. */
export interface BracedYard {
  readonly yard: string
  readonly height: Metres
  readonly apparent: ShipWind
  readonly limit: Figure<BraceLimit>
  /** From fore and aft. */
  readonly byRule: Radians
  /** As much squarer than the lower yard as the apparent wind at its height is freer: the same angle to the wind. */
  readonly byGradient: Radians
  /** Dana's half a point for each yard, said of a ship by the wind in a stiff breeze. */
  readonly byHalfPoints: Figure<Radians>
}

/** How every mast that crosses yards is braced on a course. */
export const fansOf = (rig: Rig, course: Course): readonly MastBraced[] =>
  rig.masts
    .filter(({ name }) => rig.spars.some(spar => spar.kind === 'yard' && spar.mast === name))
    .map(mast => ({ mast: mast.name, yards: fanOf(mast, rig, course) }))

export interface MastBraced {
  readonly mast: string
  readonly yards: Figure<readonly BracedYard[]>
}

/** A mast's yards on a course, from the lowest up. Unknown where one has no height. `bracing.md` has the method. */
export function fanOf(mast: Mast, rig: Rig, course: Course): Figure<readonly BracedYard[]> {
  const yards = rig.spars.filter((spar): spar is Yard => spar.kind === 'yard' && spar.mast === mast.name)
  if (yards.length === 0) return unknown(`The ${mast.name} crosses no yards.`)
  const lost = yards.find(({ middle }) => middle === undefined)
  if (lost) return unknown(`The height of the ${lost.name} is not given.`)
  const heights = yards
    .flatMap(yard => (yard.middle ? [{ yard, height: yard.middle.z }] : []))
    .toSorted((a, b) => a.height - b.height)
  const felt = heights.map(({ height }) => windAloft(course, height))
  const limits = heights.map(({ yard }) => limitOf(yard, rig))
  const freer = (i: number) => Math.abs(felt[i]?.angle ?? 0) - Math.abs(felt[0]?.angle ?? 0)
  const rule = fanByRule(radians(Math.abs(felt[0]?.angle ?? 0)), sharpestOf(limits[0]), heights.length)
  const dana = danasFan(radians(rule[0] ?? 0), heights.length)
  const isByTheWind = Math.abs(course.wind.angle) <= closeHauled
  return known(
    heights.map(({ yard, height }, i) => {
      const sharpest = i === 0 ? 0 : (stopOf(limits[i]) ?? 0)
      const held = (angle: number) => radians(Math.min(Math.PI / 2, Math.max(sharpest, angle)))
      return {
        yard: yard.name,
        height,
        apparent: felt[i] ?? course.wind,
        limit: limits[i] ?? limitOf(yard, rig),
        byRule: held(rule[i] ?? 0),
        byGradient: held((rule[0] ?? 0) + freer(i)),
        byHalfPoints: isByTheWind
          ? known(held(dana[i] ?? 0))
          : unknown('Half a point for each yard is said of a ship by the wind.'),
      }
    }),
  )
}

/** A square-rigger by the wind lies six to seven points from it: Nicholls's Seamanship and Nautical Knowledge, p. 69. */
const closeHauled = (7 * 11.25 * Math.PI) / 180

/** What the rigging leaves a yard, where that is known. */
const stopOf = (limit: Figure<BraceLimit> | undefined): Radians | undefined =>
  limit?.known ? limit.value.angle : undefined

/** The same of a lower yard, which is taken to go as sharp as usual where its truss isn't told. */
const sharpestOf = (limit: Figure<BraceLimit> | undefined): Radians => stopOf(limit) ?? usualLimit

/** The wind a yard feels: the true wind of its height, and the ship's own. */
export const windAloft = ({ wind, ship }: Course, height: Metres, exponent?: number): ShipWind =>
  apparentWind({ ...wind, speed: windAt(wind.speed, height, exponent) }, ship)
