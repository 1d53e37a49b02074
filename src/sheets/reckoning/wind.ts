import { known, type Metres, metres, metresPerSecond, units } from '../../measure/index.ts'
import {
  type Figures,
  forceOf,
  roughnessUnder,
  windAloft,
  windAt,
  windByLog,
  windPressure,
} from '../../reckon/index.ts'
import type { Table } from '../table.ts'
import { cell, column, plainNumber, type Shown, type TableUnits } from './units.ts'

const speed: Shown = { unit: 'm/s', si: 1, decimals: 1 }
const pressure: Shown = { unit: 'Pa', si: 1, decimals: 0 }
const degrees: Shown = { unit: '°', si: units.deg.si, decimals: 1 }
const force = plainNumber(0)

const usualHeights = [2, 5, 10, 20, 30, 40].map(metres)

/** The wind assumed, as it blows at heights above the sea, and as it is felt aboard. */
export function windTable(
  { assumptions }: Pick<Figures, 'assumptions'>,
  { length }: Pick<TableUnits, 'length'>,
  heights: readonly Metres[] = usualHeights,
): Table {
  const { wind, offBow, made } = assumptions
  return {
    id: 'wind',
    title: 'Wind by height',
    columns: [
      column('up', length),
      column('power law', speed),
      column('log law', speed),
      column('force', force),
      column('pressure', pressure),
      column('felt aboard', speed),
      column('off the bow', degrees),
    ],
    rows: heights.map(height => {
      const there = windAt(wind, height)
      const felt = windAloft(
        { wind: { speed: wind, angle: offBow }, ship: metresPerSecond(wind * made) },
        height,
      )
      return [
        cell(known(height), length),
        cell(known(there), speed),
        cell(known(windByLog(wind, height, roughnessUnder(wind))), speed),
        cell(known(forceOf(there)), force),
        cell(known(windPressure(there)), pressure),
        cell(known(felt.speed), speed),
        cell(known(felt.angle), degrees),
      ]
    }),
    notes: [
      'Over open sea: the power law with 0.11, the log law with the roughness that this wind gives the sea. Pressure is the bare half of density by speed squared, before any sail makes of it what it does.',
    ],
  }
}
