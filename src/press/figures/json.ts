import type { ReckoningRecord } from '../../sheets/reckoning/index.ts'

/** So many figures tell all that a measurement can. */
const digits = 6

/** A record of figures as JSON, each number rounded once: the same bytes on every machine. */
export const jsonFigures = (record: ReckoningRecord): string =>
  `${JSON.stringify(record, (_name, value) => (typeof value === 'number' ? rounded(value) : value), 2)}\n`

/** Never minus zero. */
const rounded = (value: number): number => Number(value.toPrecision(digits)) || 0
