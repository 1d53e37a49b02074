import { known, units as measures, workedFrom } from '../../measure/index.ts'
import type { Figures } from '../../reckon/index.ts'
import { type Table, words } from '../table.ts'
import { leadConvention } from './sails.ts'
import { cell, column, percent, plainNumber, type Shown, type TableUnits } from './units.ts'

export const degrees: Shown = { unit: '°', si: measures.deg.si, decimals: 1 }

/** How she balances and heels under each working sail plan that the text names. */
export function canvasTable(figures: Figures, { area, length }: TableUnits): Table {
  return {
    id: 'canvas',
    title: 'Under working canvas',
    columns: [
      column('under'),
      column('sails'),
      column('area', area),
      column('centre aft', length),
      column('up', length),
      column('lead', length),
      column('of the waterline', percent),
      column('heel', degrees),
    ],
    rows: figures.canvas().map(({ label, carried, balance, heel }) => [
      words(label),
      cell(known(carried.length), plainNumber(0)),
      cell(balance.area, area),
      cell(
        workedFrom([balance.centreOfEffort], ({ x }) => x),
        length,
      ),
      cell(
        workedFrom([balance.centreOfEffort], ({ z }) => z),
        length,
      ),
      cell(
        workedFrom([balance.lead], ({ metres }) => metres),
        length,
      ),
      cell(balance.lead.known ? balance.lead.value.share : balance.lead, percent),
      cell(heel, degrees),
    ]),
    notes: [leadConvention, heelTaken],
  }
}

/** What every heel under some sails is reckoned by. */
export const heelTaken =
  'Heel is steady and close-hauled, a pound on each square foot of the sails carried, by her metacentric height: for comparing one canvas with another.'
