import {
  type Figure,
  known,
  type Metres,
  metres,
  type Point3,
  point3,
  type SquareMetres,
  squareMetres,
  unknown,
} from '../../measure/index.ts'
import type { Carried, Rig } from '../../rig/index.ts'
import type { SailFigures } from './area.ts'
import { reefedFigures } from './reefed.ts'

/** How a set of sails balances: their area, where they pull together, and how far before the hull's own centre. */
export interface Balance {
  readonly area: Figure<SquareMetres>
  readonly centreOfEffort: Figure<Point3>
  readonly lead: Figure<Lead>
}

/** How far the centre of effort lies before the centre of lateral resistance; negative when it lies abaft it. */
export interface Lead {
  readonly metres: Metres
  /** As a share of the waterline's length: 0.063 for 6.3 %. */
  readonly share: Figure<number>
}

/** One area and where it pulls. */
export interface Effort {
  readonly area: SquareMetres
  readonly at: Point3
}

/** Balance of any set of the rig's sails, named by their keys; a name twice counts once. `balance.md` has the method. */
export function balanceOf(
  rig: Rig,
  figures: { readonly sails: ReadonlyMap<string, SailFigures> },
  sailNames: Iterable<string>,
): Balance {
  return balanced(
    rig,
    [...new Set(sailNames)].map(name => effortOf(name, figures.sails.get(name))),
  )
}

/** Balance of sails as they are carried, with their reefs. */
export const balanceUnder = (rig: Rig, carried: readonly Carried[]): Balance =>
  balanced(
    rig,
    carried.map(({ sail: name, reefs }) => {
      const sail = rig.sailAt.get(name)
      return effortOf(name, sail && reefedFigures(sail, reefs))
    }),
  )

function balanced(rig: Rig, figures: readonly Figure<Effort>[]): Balance {
  const lost = figures.find(one => !one.known)
  if (lost && !lost.known) return { area: lost, centreOfEffort: lost, lead: lost }
  const efforts = figures.flatMap(one => (one.known ? [one.value] : []))
  const centre = centreOfEffort(efforts)
  return {
    area: known(totalArea(efforts)),
    centreOfEffort: centre,
    lead: centre.known ? leadOf(rig, centre.value) : centre,
  }
}

/** The one point where the areas would pull together: the moments of the areas over their sum. */
export function centreOfEffort(efforts: readonly Effort[]): Figure<Point3> {
  const area = totalArea(efforts)
  if (area <= 0) return unknown('No sail is set.')
  const moment = (axis: 'x' | 'y' | 'z') =>
    efforts.reduce((total, effort) => total + effort.area * effort.at[axis], 0) / area
  return known(point3(moment('x'), moment('y'), moment('z')))
}

/** How far before the hull's centre of lateral resistance the point lies. */
export function leadOf({ vessel }: Pick<Rig, 'vessel'>, effort: Point3): Figure<Lead> {
  if (!vessel.lateralCentre) return unknown('The centre of lateral resistance is not given.')
  const before = vessel.lateralCentre.x - effort.x
  return known({ metres: metres(before), share: shareOf(before, vessel.waterline) })
}

function shareOf(before: number, waterline: Metres | undefined): Figure<number> {
  if (waterline === undefined) return unknown("The waterline's length is not given.")
  return waterline > 0 ? known(before / waterline) : unknown("The waterline's length is not above zero.")
}

const totalArea = (efforts: readonly Effort[]): SquareMetres =>
  squareMetres(efforts.reduce((total, effort) => total + effort.area, 0))

function effortOf(name: string, figures: SailFigures | undefined): Figure<Effort> {
  if (!figures) return unknown(`There is no sail called ${name}.`)
  if (!figures.area.known) return figures.area
  if (!figures.centroid.known) return figures.centroid
  return known({ area: figures.area.value, at: figures.centroid.value })
}
