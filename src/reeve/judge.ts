import { nearest } from '../text/index.ts'
import type { Row } from './table.ts'
import type { TableName, Tables } from './tables.ts'

/** The rows of each table. */
export type Rows = Readonly<Record<TableName, readonly Row[]>>

/** Says what the tables can't mean: names that no table declares, things given twice, pins that a rail doesn't have. */
export function judgeTables(rows: Rows, { spars, sails, rails, lines }: Tables): void {
  const spread = ['bowsprit', ...spars.map(({ name }) => name), ...sails.map(({ name }) => name)]
  const codes = rails.map(({ code }) => code)
  const ids = lines.map(({ id }) => id)
  for (const row of rows.sails) named(row, 'bent_to', spread, 'spar or stay')
  for (const row of rows.sails) if (row.text('foot_to') !== '') named(row, 'foot_to', spread, 'spar')
  for (const row of rows.lines) {
    if (row.text('acts_on') !== '') named(row, 'acts_on', spread, 'sail or spar')
    named(row, 'rail', codes, 'rail')
    const pins = rails.find(({ code }) => code === row.text('rail'))?.pins
    const pin = row.number('pin')
    if (pins !== undefined && pin !== undefined && !(Number.isInteger(pin) && pin >= 1 && pin <= pins))
      row.amiss('table/no-pin', 'pin', `rail ${row.text('rail')} has ${pins} pins, and no pin ${pin}.`)
    for (const id of row.text('opposes').split(';').filter(Boolean))
      if (!ids.includes(id))
        row.amiss('table/unknown', 'opposes', `there is no line "${id}".`, meant(id, ids))
  }
  for (const row of rows.leads) named(row, 'line', ids, 'line')
  once(rows.spars, 'spar')
  once(rows.sails, 'sail')
  once(rows.rails, 'rail')
  once(rows.lines, 'id')
  once(rows.lines, 'name')
}

function named(row: Row, column: string, known: readonly string[], what: string): void {
  const name = row.text(column)
  if (!known.includes(name))
    row.amiss('table/unknown', column, `there is no ${what} "${name}".`, meant(name, known))
}

function meant(name: string, known: readonly string[]): string {
  const near = nearest(name, known)
  return near.length > 0 ? `Is it "${near[0]}"?` : 'Enter it in its own table, or mend the name.'
}

function once(rows: readonly Row[], column: string): void {
  const seen = new Map<string, number>()
  for (const row of rows) {
    const name = row.text(column)
    const before = seen.get(name)
    if (name === '') row.amiss('table/empty', column, 'a name is due here.')
    else if (before !== undefined)
      row.amiss('table/twice', column, `"${name}" stands in row ${before} already.`)
    else seen.set(name, row.line)
  }
}
