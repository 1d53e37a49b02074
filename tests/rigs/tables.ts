import { readFileSync } from 'node:fs'

/** One row of a table, by the names of its columns. A column left empty is ''. */
export type Row = Readonly<Record<string, string>>

export const vessels = ['barque-harrow-tansy', 'schooner-pellow-finch'] as const
export type VesselName = (typeof vessels)[number]

const folder = new URL('../tables/', import.meta.url)

/** The rows of one of a vessel's tables, as invented before her rig was written. */
export function rows(vessel: VesselName, table: string): readonly Row[] {
  const [head, ...lines] = readFileSync(new URL(`${vessel}/${table}.csv`, folder), 'utf8')
    .trim()
    .split(/\r?\n/)
  const columns = cells(head ?? '')
  return lines.map(line => {
    const values = cells(line)
    return Object.fromEntries(columns.map((column, i) => [column, values[i] ?? '']))
  })
}

/** The number in a row's column; the tables leave no number empty that is asked for. */
export function number(row: Row | undefined, column: string): number {
  const written = row?.[column]
  if (!written) throw new Error(`no ${column} in ${JSON.stringify(row)}`)
  return Number(written)
}

// Notes stand between double quotes where they hold a comma; no cell of these tables holds a double quote.
function cells(line: string): readonly string[] {
  return [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map(([, quoted, bare]) => quoted ?? bare ?? '')
}
