import type { Figure, Point3, SquareMetres } from '../measure/index.ts'
import type { Rig, Sail } from '../rig/index.ts'
import { type LeadFigures, leadFigures } from './leads/index.ts'
import { once } from './once.ts'
import { balanceOf, type Lead, type SailFigures, sailFigures } from './sails/index.ts'

/** Everything reckoned of a rig: each figure known, or unknown with its reason. */
export interface Figures {
  /** By the sail's key, one for every sail of the rig, in the order of the text. */
  readonly sails: ReadonlyMap<string, SailFigures>
  /** Of all plain sail, studdingsails left out; unknown as soon as one sail is. */
  readonly total: Figure<SquareMetres>
  readonly square: Figure<SquareMetres>
  readonly foreAndAft: Figure<SquareMetres>
  /** Of all plain sail set together. */
  readonly centreOfEffort: Figure<Point3>
  readonly lead: Figure<Lead>
  /** Of every line, by its address. */
  readonly leads: () => ReadonlyMap<string, LeadFigures>
}

/** Reckons a rig's areas and balance. Any rig has figures, each known or unknown because of something said. */
export function reckon(rig: Rig): Figures {
  const sails = new Map(rig.sails.map(sail => [sail.name, sailFigures(sail)]))
  const names = (kind?: Sail['kind']) =>
    rig.sails
      .filter(sail => (kind ? sail.kind === kind : sail.kind !== 'studdingsail'))
      .map(sail => sail.name)
  const all = balanceOf(rig, { sails }, names())
  return {
    sails,
    total: all.area,
    square: balanceOf(rig, { sails }, names('square')).area,
    foreAndAft: balanceOf(rig, { sails }, names('fore-and-aft')).area,
    centreOfEffort: all.centreOfEffort,
    lead: all.lead,
    leads: once(() => leadFigures(rig)),
  }
}
