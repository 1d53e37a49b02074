import type { Table } from '../../sheets/table.ts'

/** Tables as JSON: of each its columns with their units, and its rows with what is unknown left out. */
export const jsonTables = (tables: readonly Table[]): string =>
  `${JSON.stringify(
    Object.fromEntries(
      tables.map(({ id, columns, rows, notes }) => [
        id,
        {
          columns: columns.map(({ heading, unit }) => (unit === '' ? { heading } : { heading, unit })),
          rows: rows.map(row =>
            Object.fromEntries(
              row.flatMap((cell, i) => {
                const name = columns[i]?.heading ?? String(i)
                if (cell.kind === 'unknown') return []
                return [[name, cell.kind === 'words' ? cell.words : Number(cell.value.toPrecision(6))]]
              }),
            ),
          ),
          notes,
        },
      ]),
    ),
    undefined,
    2,
  )}\n`
