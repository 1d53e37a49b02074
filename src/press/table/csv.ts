import type { Cell, Column, Table } from '../../sheets/table.ts'

/**
 * A table as CSV (RFC 4180): numbers stay numbers, and words that a spreadsheet would take for a formula are set off by an
 * apostrophe. What is unknown is empty.
 */
export function csvTable({ columns, rows }: Table): string {
  const lines = [columns.map(headOf).map(quoted), ...rows.map(row => row.map(written))]
  return lines.map(cells => `${cells.join(',')}\r\n`).join('')
}

const headOf = ({ heading, unit }: Column) => guarded(unit === '' ? heading : `${heading}, ${unit}`)

function written(cell: Cell): string {
  switch (cell.kind) {
    case 'number':
      return String(Number(cell.value.toFixed(Math.max(cell.decimals, 3))))
    case 'words':
      return quoted(guarded(cell.words))
    case 'unknown':
      return ''
  }
}

/** What begins so is a formula to a spreadsheet. */
export const guarded = (words: string) => (/^[=+\-@\t\r]/.test(words) ? `'${words}` : words)

const quoted = (words: string) => (/[",\r\n]/.test(words) ? `"${words.replaceAll('"', '""')}"` : words)
