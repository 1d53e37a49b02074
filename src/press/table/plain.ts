import { fixed } from '../../measure/index.ts'
import type { Cell, Column, Table } from '../../sheets/table.ts'
import { oneLine } from '../findings/index.ts'

/** Tables as plain text for a terminal: numbers ranged right, words left, and why a figure is missing below its table. */
export const plainTables = (tables: readonly Table[]): string => tables.map(plainTable).join('\n')

function plainTable({ title, columns, rows, notes }: Table): string {
  const cells = rows.map(row => columns.map((_column, i) => shown(row[i])))
  const heads = columns.map(headOf)
  const widths = columns.map((_column, i) =>
    Math.max(widthOf(heads[i] ?? ''), ...cells.map(row => widthOf(row[i] ?? ''))),
  )
  const ranged = columns.map((_column, i) => rows.some(row => row[i]?.kind === 'number'))
  const line = (row: readonly string[]) =>
    row
      .map((words, i) => padded(words, widths[i] ?? 0, ranged[i] ?? false))
      .join('  ')
      .trimEnd()
  const unknowns = reasonsOf(columns, rows)
  return [
    oneLine(title),
    ...(columns.some(column => column.heading !== 'figure') ? [line(heads)] : []),
    line(widths.map(width => '-'.repeat(width))),
    ...cells.map(line),
    ...[...unknowns, ...notes].flatMap(note => wrapped(oneLine(note))),
    '',
  ].join('\n')
}

const headOf = ({ heading, unit }: Column): string => (unit === '' ? heading : `${heading}, ${unit}`)

function shown(cell: Cell | undefined): string {
  switch (cell?.kind) {
    case 'words':
      return oneLine(cell.words)
    case 'number':
      return fixed(cell.value, cell.decimals)
    case 'unknown':
      return '?'
    case undefined:
      return ''
  }
}

/** Each reason once for the same columns, with the rows it holds for: 'Jib, Foresail (area, weight)'. */
function reasonsOf(columns: Table['columns'], rows: Table['rows']): readonly string[] {
  const held = new Map<string, Set<string>>()
  for (const [name, ...cells] of rows) {
    const lacking = new Map<string, string[]>()
    cells.forEach((cell, i) => {
      if (cell.kind !== 'unknown') return
      lacking.set(cell.because, [...(lacking.get(cell.because) ?? []), columns[i + 1]?.heading ?? ''])
    })
    for (const [because, headings] of lacking) {
      const told = `${headings.join() === 'value' ? '' : ` (${headings.join(', ')})`}: ${because}`
      const names = held.get(told) ?? new Set()
      held.set(told, names)
      if (name?.kind === 'words') names.add(name.words)
    }
  }
  return [...held].map(([told, names]) => `? ${[...names].join(', ')}${told}`)
}

/** What is said below a table, in lines of a hundred columns. */
function wrapped(said: string): readonly string[] {
  const lines: string[] = []
  for (const word of said.split(' ')) {
    const last = lines.at(-1)
    if (last === undefined || widthOf(last) + 1 + widthOf(word) > 100) lines.push(word)
    else lines[lines.length - 1] = `${last} ${word}`
  }
  return lines
}

const widthOf = (words: string): number => [...words].length

const padded = (words: string, width: number, right: boolean): string => {
  const blank = ' '.repeat(Math.max(0, width - widthOf(words)))
  return right ? `${blank}${words}` : `${words}${blank}`
}
