import {
  figureAt,
  type MetresPerSecond,
  metresPerSecond,
  type Newtons,
  newtons,
  type Radians,
  radians,
  type SquareMetres,
  squareMetres,
  units,
} from '../measure/index.ts'
import { type Assumptions, canvasNames, knot, middleOf, sparMaterials, usual } from '../reckon/index.ts'
import { nearest } from '../text/index.ts'
import { Complaint } from './complaint.ts'

/** What a user may choose of the assumptions, as said on the command line. */
export interface AssumptionOptions {
  readonly wind?: string
  readonly offBow?: string
  readonly hand?: string
  readonly loss?: string
  readonly friction?: string
  readonly model?: string
  readonly timber?: string
  readonly canvas?: string
  readonly ropeEnd?: string
  readonly ropeAge?: string
}

/** The usual assumptions, but for what the user says. Complains of what makes no sense. */
export function assumptionsOf(options: AssumptionOptions): Assumptions {
  const { wind, offBow, hand, loss, friction, model, timber, canvas, ropeEnd, ropeAge } = options
  return {
    ...usual,
    wind: wind === undefined ? usual.wind : speedIn('--wind', wind),
    offBow: offBow === undefined ? usual.offBow : angleIn('--off-bow', offBow),
    friction: {
      model: (model as Assumptions['friction']['model'] | undefined) ?? usual.friction.model,
      share: friction === undefined ? usual.friction.share : shareIn('--friction', friction),
    },
    hands: {
      hand: hand === undefined ? usual.hands.hand : forceIn('--hand', hand),
      loss: loss === undefined ? usual.hands.loss : shareIn('--loss', loss),
    },
    timber: timber === undefined ? usual.timber : oneOf('--timber', timber, sparMaterials),
    canvas: canvas === undefined ? usual.canvas : oneOf('--canvas', canvas, canvasNames),
    end: (ropeEnd as Assumptions['end'] | undefined) ?? usual.end,
    age: (ropeAge as Assumptions['age'] | undefined) ?? usual.age,
  }
}

function oneOf(option: string, said: string, names: readonly string[]): string {
  if (names.includes(said)) return said
  const near = nearest(said, names)
  throw new Complaint(`${option} "${said}": say one of ${(near.length > 0 ? near : names).join(', ')}.`)
}

const gravity = 9.80665

/** A force as said, or the weight of a mass: '12 kN', '4 t'. */
export function forceIn(option: string, said: string): Newtons {
  const [, amount, unit] = /^\s*([0-9]+(?:[.,][0-9]+)?)\s*(N|kN|lbf)\s*$/.exec(said) ?? []
  if (amount !== undefined && unit !== undefined) {
    const size = units[unit as 'N' | 'kN' | 'lbf'].si
    return positive(option, said, newtons(Number(amount.replace(',', '.')) * size))
  }
  return newtons(measureIn(option, said, 'mass', 'a weight or a force, as in "4 t" or "12 kN"') * gravity)
}

/** A length as said: '32 ft 6 in', '16 mm'. */
export const lengthIn = (option: string, said: string): number =>
  measureIn(option, said, 'length', 'a length, as in "32 ft 6 in" or "9.90 m"')

/** A mass as said: '9 t', '20000 lb'. */
export const massIn = (option: string, said: string): number =>
  measureIn(option, said, 'mass', 'a weight, as in "9 t" or "20000 lb"')

/** An area as said: '65 m2', '700 ft2'. */
export function areaIn(option: string, said: string): SquareMetres {
  const [, amount, unit] = /^\s*([0-9]+(?:[.,][0-9]+)?)\s*(m|ft)[2²]\s*$/.exec(said) ?? []
  const area = Number(amount?.replace(',', '.')) * (units[unit as 'm' | 'ft']?.si ?? Number.NaN) ** 2
  if (!(area < largestArea))
    throw new Complaint(`${option} "${said}": say an area, as in "65 m2" or "700 ft2".`)
  return positive(option, said, squareMetres(area))
}
const largestArea = 1e6

const shareIn = (option: string, said: string): number => {
  const read = figureAt(said.trim(), 0)
  if (read?.written !== said.trim() || read.dimension !== 'share' || read.fault || read.value >= 1)
    throw new Complaint(`${option} "${said}": say a share below 100 %, as in "10 %".`)
  return read.value
}

/** A wind as said: '8 m/s', '16 kn', 'force 5' (at its middle, 0.836 B^1.5 m/s, from memory of G. C. Simpson, 1906). */
function speedIn(option: string, said: string): MetresPerSecond {
  const [, force] = /^\s*force\s+([0-9]{1,2})\s*$/i.exec(said) ?? []
  if (force !== undefined && Number(force) <= 12) return middleOf(Number(force))
  const [, amount, unit] = /^\s*([0-9]+(?:[.,][0-9]+)?)\s*(m\/s|kn|knots)\s*$/i.exec(said) ?? []
  const speed = Number(amount?.replace(',', '.')) * (unit?.toLowerCase() === 'm/s' ? 1 : knot)
  if (!(speed <= strongest))
    throw new Complaint(
      `${option} "${said}": say a wind up to ${strongest} m/s, as in "8 m/s", "16 kn" or "force 5".`,
    )
  return metresPerSecond(speed)
}
const strongest = 100

/** How far off the bow, from ahead to astern: '67.5 deg'. */
function angleIn(option: string, said: string): Radians {
  const want = 'an angle up to 180 degrees, as in "67.5 deg"'
  const angle = measureIn(option, said, 'angle', want)
  if (angle > Math.PI) throw new Complaint(`${option} "${said}": say ${want}.`)
  return radians(angle)
}

function measureIn(
  option: string,
  said: string,
  dimension: 'length' | 'mass' | 'angle',
  want: string,
): number {
  const read = figureAt(said.trim(), 0)
  if (read?.written !== said.trim() || read.dimension !== dimension || read.fault)
    throw new Complaint(`${option} "${said}": say ${want}.`)
  return positive(option, said, read.value)
}

function positive<N extends number>(option: string, said: string, value: N): N {
  if (!(value > 0)) throw new Complaint(`${option} "${said}": it must be above nothing.`)
  return value
}
