import {
  type Kilograms,
  type Metres,
  type Pascals,
  pascals,
  type Radians,
  radians,
  type SquareMetres,
} from '../../measure/index.ts'

import { foot, proofPressure } from './rules-in-print.ts'

const gravity = 9.80665

/** A steady wind on sails, and what stands against it. */
export interface Heeling {
  readonly pressure: Pascals
  readonly area: SquareMetres
  /** From the centre of effort down to that of lateral resistance. */
  readonly arm: Metres
  readonly displacement: Kilograms
  readonly metacentricHeight: Metres
}

/** Heeling moment, upright, in newton metres. */
export const heelingMoment = ({ pressure, area, arm }: Pick<Heeling, 'pressure' | 'area' | 'arm'>): number =>
  pressure * area * arm

/** 46 CFR 178.330: heeling moment of the proof test in newton metres, of all sail flat and its height over the water. */
export const proofMoment = (area: SquareMetres, height: Metres): number =>
  heelingMoment({ pressure: pascals((proofPressure * pound) / foot ** 2), area, arm: height })

/** A pound's weight, in newtons. */
const pound = 0.45359237 * gravity

/**
 * Steady heel: the moment, less by the square of the cosine, against displacement times metacentric height times the
 * sine. Sound to some 15 degrees. Quarter of a turn where nothing stands against it.
 */
export function heelUnder(heeling: Heeling): Radians {
  const { displacement, metacentricHeight } = heeling
  const righting = displacement * gravity * metacentricHeight
  if (!(righting > 0)) return radians(Math.PI / 2)
  const ratio = heelingMoment(heeling) / righting
  // sin a = r (1 - sin2 a): a square equation in the sine.
  const sine = ratio === 0 ? 0 : (-1 + Math.sqrt(1 + 4 * ratio ** 2)) / (2 * ratio)
  return radians(Math.asin(sine))
}
