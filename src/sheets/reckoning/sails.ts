import { known, unknown, workedFrom } from '../../measure/index.ts'
import { balanceOf, canvasNumber, type Figures, listOf } from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import { type Table, words } from '../table.ts'
import { cell, column, percent, plainNumber, type TableUnits } from './units.ts'

const whole = plainNumber(0)

/** Every sail: its area, where it pulls, its cloth, and the wind's force on it. */
export function sailsTable(rig: Rig, figures: Figures, units: TableUnits): Table {
  return {
    id: 'sails',
    title: 'Sails',
    columns: [
      column('sail'),
      column('area', units.area),
      column('centre aft', units.length),
      column('up', units.length),
      column('canvas'),
      column('of'),
      column('weight', units.mass),
      column('force of the wind', units.force),
    ],
    rows: rig.sails.map(sail => {
      const { area, centroid } = figures.sails.get(sail.name) ?? { area: noFigures, centroid: noFigures }
      const load = figures.sailLoads().get(sail.name) ?? noFigures
      return [
        words(sail.label),
        cell(area, units.area),
        cell(
          workedFrom([centroid], ({ x }) => x),
          units.length,
        ),
        cell(
          workedFrom([centroid], ({ z }) => z),
          units.length,
        ),
        cell(known(canvasNumber(sail)), whole),
        words(sail.cloth.number === undefined ? 'taken' : listOf(sail, figures.assumptions.canvas)),
        cell(
          workedFrom([load], ({ mass }) => mass),
          units.mass,
        ),
        cell(
          workedFrom([load], ({ force }) => force),
          units.force,
        ),
      ]
    }),
    notes: [
      `Canvas whose number the text doesn’t say is taken to be ${figures.assumptions.canvas} of the number shown; the weight is dry. The force is that of a wind of ${figures.assumptions.wind} m/s on the sail full.`,
    ],
  }
}

/** How she balances as sail is set one after another, in the order that the text names. */
export function settingTable(rig: Rig, figures: Figures, units: TableUnits): Table {
  return {
    id: 'setting',
    title: 'Balance as sail is set',
    columns: [
      column('then'),
      column('area set', units.area),
      column('centre aft', units.length),
      column('up', units.length),
      column('lead', units.length),
      column('of the waterline', percent),
    ],
    rows: rig.order.map((name, i) => {
      const { area, centreOfEffort, lead } = balanceOf(rig, figures, rig.order.slice(0, i + 1))
      return [
        words(rig.sailAt.get(name)?.label ?? name),
        cell(area, units.area),
        cell(
          workedFrom([centreOfEffort], ({ x }) => x),
          units.length,
        ),
        cell(
          workedFrom([centreOfEffort], ({ z }) => z),
          units.length,
        ),
        cell(
          workedFrom([lead], ({ metres }) => metres),
          units.length,
        ),
        cell(lead.known ? lead.value.share : lead, percent),
      ]
    }),
    notes: [leadConvention],
  }
}

/** How the lead is counted: a number means little without it. */
export const leadConvention =
  'The lead is from the centre of lateral resistance that the text states to the centre of effort of the sails named, each counted whole and flat; before it is above zero.'

const noFigures = unknown('It has no figures.')
