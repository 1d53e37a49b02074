import {
  type Figure,
  type Kilograms,
  known,
  type Metres,
  metres,
  type Radians,
  radians,
  type SquareMetres,
  unknown,
} from '../../measure/index.ts'
import { areaTo, armAt, type Curve, greatestAt, rangeOf } from './righting.ts'
import { foot, leastRange, longTon, numeral, numerals, type Waters, weatherTerm } from './rules-in-print.ts'

/** Whether a printed rule's equation was read, or is known from memory only. */
export const notChecked = 'equation not checked against the printed rule'

/** What a criterion asks for and what the vessel has. */
export interface Criterion {
  readonly has: number
  readonly asked: number
  readonly isMet: boolean
  /** Said wherever the figure is shown: its equation is from memory. */
  readonly caution: typeof notChecked | undefined
}

const criterion = (has: number, asked: number, caution?: typeof notChecked): Criterion => ({
  has,
  asked,
  isMet: has >= asked,
  caution,
})

const degree = Math.PI / 180

/** A heeling arm that falls off with the square of the cosine, by its value upright. */
const uprightArm = (arm: Metres, angle: Radians): Metres => metres(arm / Math.cos(angle) ** 2)

/** HZA: the heeling arm upright whose curve crosses the righting arm where the deck's edge goes under. */
export function deckEdgeArm(curve: Curve, deckEdge: Radians): Figure<Metres> {
  const arm = armAt(curve, deckEdge)
  return arm === undefined ? unknown(tooShort(deckEdge)) : known(uprightArm(arm, deckEdge))
}

/** HZB and HZC: the heeling arm upright whose area to an angle is that of the righting arm. */
export function equalAreaArm(curve: Curve, angle: Radians): Figure<Metres> {
  const area = areaTo(curve, angle)
  if (area === undefined) return unknown(tooShort(angle))
  return known(metres(area / (angle / 2 + Math.sin(2 * angle) / 4)))
}

const tooShort = (angle: Radians): string =>
  `The righting arms end before ${(angle / degree).toFixed(0)} degrees.`

/** A vessel as the criteria see her. */
export interface Case {
  readonly displacement: Kilograms
  readonly curve: Curve
  readonly deckEdge: Radians
  /** Where water gets below; undefined where it doesn't before 60 degrees. */
  readonly downflooding: Radians | undefined
  readonly waters: Waters
  /** Lateral area above the water, all sail set and trimmed flat, hull and spars with it. */
  readonly area: SquareMetres
  /** From its centre down to the centre of the underwater area. */
  readonly arm: Metres
}

/** 46 CFR 171.055(d): what a heeling arm upright comes to, in long tons on the square foot. */
export const numeralOf = (
  { displacement, area, arm }: Pick<Case, 'displacement' | 'area' | 'arm'>,
  heeling: Metres,
): number => (displacement * heeling) / (area * arm) / numeral

export interface SailingVesselCriteria {
  readonly x: Figure<Criterion>
  readonly y: Figure<Criterion>
  readonly z: Figure<Criterion>
  /** Degrees to which the righting arm stays positive. */
  readonly range: Criterion
}

/** Below this the printed rule cuts the curve short, in degrees: how, was not read. */
const leastGreatest = 35

/** 46 CFR 171.055, in the printed units (long tons on the square foot). `stability.md` has the equations. */
export function sailingVessel(vessel: Case): SailingVesselCriteria {
  const { curve, deckEdge, downflooding, waters, area, arm } = vessel
  const asked = numerals[waters]
  const range = rangeOf(curve)
  const judged = (figure: Figure<Metres>, least: number): Figure<Criterion> => {
    if (!(area * arm > 0)) return unknown('The area under sail or its arm is nothing.')
    if (greatestAt(curve) < leastGreatest * degree)
      return unknown(
        `Its greatest arm lies under ${leastGreatest} degrees: the rule cuts the curve there, and how was not read.`,
      )
    return figure.known ? known(criterion(numeralOf(vessel, figure.value), least, notChecked)) : figure
  }
  const flooding = radians(Math.min(downflooding ?? Number.POSITIVE_INFINITY, 60 * degree))
  const knockdown = radians(Math.min(range, 90 * degree))
  return {
    x: judged(deckEdgeArm(curve, deckEdge), asked.x),
    y: judged(equalAreaArm(curve, flooding), asked.y),
    z: judged(equalAreaArm(curve, knockdown), asked.z),
    range: criterion(range / degree, leastRange[waters]),
  }
}

/** A vessel in a beam wind under bare poles: hull and spars without sails. */
export interface WeatherCase {
  readonly length: Metres
  readonly area: SquareMetres
  readonly arm: Metres
  readonly displacement: Kilograms
  readonly deckEdge: Radians
  readonly waters: Waters
}

/** 46 CFR 170.170: the least metacentric height in a beam wind, for a sailing vessel. */
export function leastMetacentricHeight({
  length,
  area,
  arm,
  displacement,
  deckEdge,
  waters,
}: WeatherCase): Metres {
  const pressure = ((weatherTerm[waters] + (length / foot / 14_200) ** 2) * longTon) / foot ** 2
  const angle = Math.min(14 * degree, deckEdge)
  return metres((pressure * area * arm) / (displacement * Math.tan(angle)))
}

/** 46 CFR 171.057, in pounds on the square foot: the breadth between the hulls' middle lines, sail, and its centre above the deck. */
export const catamaran = (
  displacement: Kilograms,
  breadth: Metres,
  sail: SquareMetres,
  arm: Metres,
): number => (0.1 * displacement * breadth) / (sail * arm) / (0.45359237 / foot ** 2)
