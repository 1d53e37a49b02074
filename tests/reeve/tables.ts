import { readFileSync } from 'node:fs'
import { type TableName, tableNames } from '../../src/reeve/index.ts'
import type { Source } from '../../src/text/index.ts'
import type { VesselName } from '../rigs/tables.ts'

/** The tables of an example vessel, as they are read from their folder. */
export const tablesOf = (vessel: VesselName): Map<TableName, Source> =>
  new Map(
    tableNames.map(name => {
      const file = new URL(`../tables/${vessel}/${name}.csv`, import.meta.url)
      return [name, { name: `${name}.csv`, text: readFileSync(file, 'utf8') }]
    }),
  )

/** The same with the first `from` in one of the tables changed to `to`. */
export function spoiledTables(vessel: VesselName, table: TableName, from: string, to: string) {
  const tables = tablesOf(vessel)
  const { name, text } = tables.get(table) ?? { name: '', text: '' }
  if (!text.includes(from)) throw new Error(`no "${from}" in ${table}`)
  return tables.set(table, { name, text: text.replace(from, to) })
}

/** Texts of tables as they are read from their files. */
export const sourcesOf = (tables: ReadonlyMap<TableName, string>): Map<TableName, Source> =>
  new Map([...tables].map(([name, text]) => [name, { name: `${name}.csv`, text }]))
