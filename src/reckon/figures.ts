import {
  type Figure,
  type Kilograms,
  metresPerSecond,
  type Point3,
  type Radians,
  type SquareMetres,
} from '../measure/index.ts'
import type { Canvas, Carried, Rig, Sail } from '../rig/index.ts'
import { type Assumptions, usual } from './assumptions.ts'
import { type Course, fansOf, type MastBraced } from './brace/index.ts'
import { type Fouls, foulsOf, type LeadFigures, leadFigures } from './leads/index.ts'
import { type LoadFigures, loadFigures, type SailLoad, sailLoads } from './load/index.ts'
import { once } from './once.ts'
import {
  type Balance,
  balanceOf,
  balanceUnder,
  type Lead,
  type SailFigures,
  sailFigures,
} from './sails/index.ts'
import { sparMass } from './spars/index.ts'
import { heelOf, type StabilityFigures, stabilityOf } from './stability/index.ts'

/** Everything reckoned of a rig: each figure known, or unknown with its reason. What costs more is reckoned when asked. */
export interface Figures {
  readonly assumptions: Assumptions
  /** By the sail's key, one for every sail of the rig, in the order of the text. */
  readonly sails: ReadonlyMap<string, SailFigures>
  /** Of all plain sail, studdingsails left out; unknown as soon as one sail is. */
  readonly total: Figure<SquareMetres>
  readonly square: Figure<SquareMetres>
  readonly foreAndAft: Figure<SquareMetres>
  /** Of all plain sail set together. */
  readonly centreOfEffort: Figure<Point3>
  readonly lead: Figure<Lead>
  /** What each sail weighs and draws, by its key. */
  readonly sailLoads: () => ReadonlyMap<string, Figure<SailLoad>>
  /** What each spar weighs, by its key. */
  readonly spars: () => ReadonlyMap<string, Figure<Kilograms>>
  /** Of every line, by its address. */
  readonly leads: () => ReadonlyMap<string, LeadFigures>
  /** Where leads come too near to each other, to standing rigging or to what stands on deck. */
  readonly fouls: () => Fouls
  readonly stability: () => StabilityFigures
  /** How she balances and heels under each working sail plan of the text, in its order. */
  readonly canvas: () => readonly UnderCanvas[]
  /** How the yards of each mast stand, in the wind and off the bow as assumed. */
  readonly bracing: () => readonly MastBraced[]
  readonly loads: () => ReadonlyMap<string, LoadFigures>
}

/** Some sails as carried together. */
export interface UnderCanvas {
  readonly label: string
  readonly carried: readonly Carried[]
  readonly balance: Balance
  /** Steady, close-hauled, at a pound on the square foot. */
  readonly heel: Figure<Radians>
}

/** How she balances and heels under some of her sails. */
export function underCanvas(
  rig: Rig,
  { label, sails: carried }: Pick<Canvas, 'label' | 'sails'>,
): UnderCanvas {
  const balance = balanceUnder(rig, carried)
  const heel = heelOf(rig, { total: balance.area, centreOfEffort: balance.centreOfEffort })
  return { label, carried, balance, heel }
}

/** Reckons a rig. Any rig has figures, each known or unknown because of something said. */
export function reckon(rig: Rig, assumptions: Assumptions = usual): Figures {
  const sails = new Map(rig.sails.map(sail => [sail.name, sailFigures(sail)]))
  const names = (kind?: Sail['kind']) =>
    rig.sails
      .filter(sail => (kind ? sail.kind === kind : sail.kind !== 'studdingsail'))
      .map(sail => sail.name)
  const all = balanceOf(rig, { sails }, names())
  const leads = once(() => leadFigures(rig))
  const loadsOfSails = once(() => sailLoads(rig, sails, assumptions))
  return {
    assumptions,
    sails,
    total: all.area,
    square: balanceOf(rig, { sails }, names('square')).area,
    foreAndAft: balanceOf(rig, { sails }, names('fore-and-aft')).area,
    centreOfEffort: all.centreOfEffort,
    lead: all.lead,
    sailLoads: loadsOfSails,
    spars: once(() => new Map(rig.spars.map(spar => [spar.name, sparMass(spar, assumptions.timber)]))),
    leads,
    fouls: once(() => foulsOf(rig)),
    bracing: once(() => fansOf(rig, courseOf(assumptions))),
    stability: once(() => stabilityOf(rig, { total: all.area, centreOfEffort: all.centreOfEffort })),
    canvas: once(() => rig.canvas.map(one => underCanvas(rig, one))),
    loads: once(() => loadFigures(rig, { sails: loadsOfSails(), leads: leads(), assumptions })),
  }
}

const courseOf = ({ wind, offBow, made }: Assumptions): Course => ({
  wind: { speed: wind, angle: offBow },
  ship: metresPerSecond(wind * made),
})
