import {
  type Figure,
  known,
  type Metres,
  metres,
  onceKnown,
  type Point3,
  pascals,
  type Radians,
  type SquareMetres,
  squareMetres,
  unknown,
  workedFrom,
} from '../../measure/index.ts'
import type { Hull, Rig, Stability } from '../../rig/index.ts'
import { leastMetacentricHeight, type SailingVesselCriteria, sailingVessel } from './criteria.ts'
import { heelUnder, proofMoment } from './heel.ts'
import { curveOf } from './righting.ts'
import type { Waters } from './rules-in-print.ts'
import { type Area, sparAreas } from './spar-areas.ts'

/** What is reckoned of a vessel's stability, each figure with its reason where it can't be told. */
export interface StabilityFigures {
  /** 46 CFR 171.055, with all sail set. */
  readonly criteria: Figure<SailingVesselCriteria>
  /** 46 CFR 170.170, under bare poles: the least metacentric height. */
  readonly leastMetacentricHeight: Figure<Metres>
  /** Steady heel close-hauled under all sail, at a pound on the square foot. */
  readonly heel: Figure<Radians>
  /** 46 CFR 178.330: moment of the proof test of a small vessel, in newton metres; undefined where it isn't asked of her waters. */
  readonly proof: Figure<number> | undefined
}

/** Sails all set: what they are together, and where they pull. */
export interface SailsSet {
  readonly total: Figure<SquareMetres>
  readonly centreOfEffort: Figure<Point3>
}

/** Close-hauled planning load: a pound on the square foot. */
const planningLoad = pascals(47.88)

export function stabilityOf(rig: Rig, sails: SailsSet): StabilityFigures {
  const side = sideOf(rig)
  return {
    criteria: criteriaOf(rig, sails, side),
    leastMetacentricHeight: onceKnown(side, side => underBarePoles(rig, together([side, ...sparAreas(rig)]))),
    heel: heelOf(rig, sails),
    proof: proofOf(rig, sails),
  }
}

function criteriaOf({ vessel }: Rig, sails: SailsSet, side: Figure<Area>): SailingCriteria {
  const papers = papersOf(vessel.stability)
  if (!papers.known) return papers
  if (vessel.displacement === undefined) return unknown('Her displacement is not given.')
  const under = underwaterCentre(vessel)
  if (!under.known) return under
  if (!side.known) return side
  if (!sails.total.known) return sails.total
  if (!sails.centreOfEffort.known) return sails.centreOfEffort
  const { area, height } = together([
    side.value,
    { area: sails.total.value, height: sails.centreOfEffort.value.z },
  ])
  return known(
    sailingVessel({
      ...papers.value,
      displacement: vessel.displacement,
      area,
      arm: metres(height - under.value),
    }),
  )
}

type SailingCriteria = StabilityFigures['criteria']

function papersOf({ rightingArms, deckEdge, downflooding, waters }: Stability) {
  if (rightingArms.length === 0) return unknown('Her righting arms are not given.')
  if (deckEdge === undefined) return unknown('The heel that puts the deck edge under is not given.')
  if (waters === undefined) return unknown('It is not said in what waters she sails.')
  return known({ curve: curveOf(rightingArms), deckEdge, downflooding, waters: waters as Waters })
}

/** Areas as one, with the height of their common centre. */
function together(areas: readonly Area[]): Area {
  const area = areas.reduce((sum, one) => sum + one.area, 0)
  const moment = areas.reduce((sum, one) => sum + one.area * one.height, 0)
  return { area: squareMetres(area), height: metres(moment / area) }
}

/** Asked in waters that are not exposed, where the text says that she sails in such. */
function proofOf({ vessel }: Rig, { total, centreOfEffort }: SailsSet): Figure<number> | undefined {
  const { waters } = vessel.stability
  if (waters === undefined || waters === 'exposed') return undefined
  return workedFrom([total, centreOfEffort] as const, (area, { z }) => proofMoment(area, z))
}

function underBarePoles({ vessel }: Rig, { area, height }: Area): Figure<Metres> {
  const { displacement, stability, waterline } = vessel
  const under = underwaterCentre(vessel)
  if (displacement === undefined) return unknown('Her displacement is not given.')
  if (waterline === undefined) return unknown("The waterline's length is not given.")
  if (stability.deckEdge === undefined) return unknown('The heel that puts the deck edge under is not given.')
  if (stability.waters === undefined) return unknown('It is not said in what waters she sails.')
  if (!under.known) return under
  return known(
    leastMetacentricHeight({
      length: waterline,
      area,
      arm: metres(height - under.value),
      displacement,
      deckEdge: stability.deckEdge,
      waters: stability.waters,
    }),
  )
}

/** Steady heel close-hauled under some sails, at a pound on the square foot. */
export function heelOf({ vessel }: Rig, { total, centreOfEffort }: SailsSet): Figure<Radians> {
  const { displacement, metacentricHeight } = vessel
  const under = underwaterCentre(vessel)
  if (displacement === undefined) return unknown('Her displacement is not given.')
  if (metacentricHeight === undefined) return unknown('Her metacentric height is not given.')
  if (!under.known) return under
  if (!total.known) return total
  if (!centreOfEffort.known) return centreOfEffort
  const arm = metres(centreOfEffort.value.z - under.value)
  return known(heelUnder({ pressure: planningLoad, area: total.value, arm, displacement, metacentricHeight }))
}

/** Height of the centre of the underwater area: the lateral centre, else half the draught below. */
function underwaterCentre({ lateralCentre, draught }: Rig['vessel']): Figure<Metres> {
  if (lateralCentre) return known(lateralCentre.z)
  return draught === undefined
    ? unknown('Neither the lateral centre nor the draught is given.')
    : known(metres(-draught / 2))
}

/** The side of the hull above the water, from stem to taffrail: as high as her sheer and her bulwark. */
function sideOf({ hull, vessel }: Rig): Figure<Area> {
  const length = vessel.waterline
  const sheer = hull && sheerOf(hull)
  if (!sheer || length === undefined) return unknown("The hull's sheer or her waterline is not given.")
  const height = sheer + (hull?.bulwark ?? 0)
  return known({ area: squareMetres(length * height), height: metres(height / 2) })
}

/** Mean height of the sheer: a parabola on each side of its lowest point, that lies half way. */
function sheerOf({ bowSheer, lowestSheer, sternSheer }: Hull): number | undefined {
  if (bowSheer === undefined || !lowestSheer || sternSheer === undefined) return undefined
  const low = lowestSheer.z
  return low + (bowSheer - low + (sternSheer - low)) / 6
}
