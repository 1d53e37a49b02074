import { type Figure, workedFrom } from '../../measure/index.ts'
import {
  type Balance,
  type Figures,
  groupsOf,
  leadRanges,
  runningRigging,
  type UnderCanvas,
} from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import { type Cell, type Table, words } from '../table.ts'
import { degrees, heelTaken } from './canvas.ts'
import { leadConvention } from './sails.ts'
import { cell, column, percent, type Shown, type TableUnits } from './units.ts'

/** The vessel as a whole, a figure a row: name, value, unit. */
export function wholeTable(rig: Rig, figures: Figures, units: TableUnits): Table {
  const { total, centreOfEffort, lead } = figures
  return {
    id: 'whole',
    title: rig.vessel.name,
    columns: [column('figure'), column('value'), column('unit')],
    rows: [
      ...groupsOf(rig, figures).map(({ name, area }) => row(`Area, ${name}`, area, units.area)),
      ...balanceRows({ area: total, centreOfEffort, lead }, units),
      row('Running rigging, to cut', runningRigging(rig, figures.leads()), units.length),
    ],
    notes: [leadConvention, rangesNote()],
  }
}

/** A set of sails that the user names, or the working sail plan of that name. */
export function chosenTable({ label, balance, heel }: UnderCanvas, units: TableUnits): Table {
  return {
    id: 'chosen',
    title: `Balance under ${label}`,
    columns: [column('figure'), column('value'), column('unit')],
    rows: [...balanceRows(balance, units), row('Steady heel, close-hauled', heel, degrees)],
    notes: [leadConvention, heelTaken],
  }
}

const balanceRows = ({ area, centreOfEffort, lead }: Balance, units: TableUnits): Table['rows'] => [
  row('Area, all of it', area, units.area),
  row(
    'Centre of effort, aft',
    workedFrom([centreOfEffort], ({ x }) => x),
    units.length,
  ),
  row(
    'Centre of effort, up',
    workedFrom([centreOfEffort], ({ z }) => z),
    units.length,
  ),
  row(
    'Lead',
    workedFrom([lead], ({ metres }) => metres),
    units.length,
  ),
  row('Lead, of the waterline', lead.known ? lead.value.share : lead, percent),
]

const row = (name: string, figure: Figure<number>, shown: Shown): readonly Cell[] => [
  words(name),
  cell(figure, shown),
  words(figure.known ? shown.unit : ''),
]

/** Ranges are shown beside the lead, and judge nothing. */
function rangesNote(): string {
  const ranges = leadRanges.map(
    ({ rig, low, high }) => `${rig} ${Math.round(low * 100)} to ${Math.round(high * 100)} %`,
  )
  return `Usual leads, under conventions of their own: ${ranges.join('; ')}.`
}
