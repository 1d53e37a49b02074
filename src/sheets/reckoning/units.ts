import { type Figure, units } from '../../measure/index.ts'
import type { Vessel } from '../../rig/index.ts'
import { speaksFeet } from '../measure-words.ts'
import type { Cell, Column } from '../table.ts'

/** A measure as a table shows it: its unit, how many SI units make one, and its decimals. */
export interface Shown {
  readonly unit: string
  readonly si: number
  readonly decimals: number
}

/** The measures of the tables, in the units that the vessel's papers speak. */
export interface TableUnits {
  readonly length: Shown
  readonly rope: Shown
  readonly area: Shown
  readonly mass: Shown
  readonly force: Shown
}

/** A length in metres, for what is reckoned without a vessel. */
export const metricLength: Shown = { unit: 'm', si: 1, decimals: 2 }

export function tableUnits(vessel: Vessel): TableUnits {
  const { m, mm, ft, kg, lb, kN, lbf } = units
  const inches = { unit: 'in', si: units.in.si, decimals: 2 }
  return speaksFeet(vessel)
    ? {
        length: { unit: 'ft', si: ft.si, decimals: 1 },
        rope: inches,
        area: { unit: 'ft²', si: ft.si ** 2, decimals: 0 },
        mass: { unit: 'lb', si: lb.si, decimals: 0 },
        force: { unit: 'lbf', si: lbf.si, decimals: 0 },
      }
    : {
        length: { unit: 'm', si: m.si, decimals: 2 },
        rope: { unit: 'mm', si: mm.si, decimals: 0 },
        area: { unit: 'm²', si: 1, decimals: 1 },
        mass: { unit: 'kg', si: kg.si, decimals: 0 },
        force: { unit: 'kN', si: kN.si, decimals: 2 },
      }
}

export const plainNumber = (decimals: number): Shown => ({ unit: '', si: 1, decimals })
export const percent: Shown = { unit: '%', si: 0.01, decimals: 1 }

export const column = (heading: string, shown?: Shown): Column => ({ heading, unit: shown?.unit ?? '' })

/** A figure as a cell of its column. */
export function cell(figure: Figure<number>, { si, decimals }: Shown): Cell {
  return figure.known
    ? { kind: 'number', value: figure.value / si, decimals }
    : { kind: 'unknown', because: figure.because }
}
