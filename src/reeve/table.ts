import { parse } from 'csv-parse/sync'
import type { Finding, Slug } from '../findings/index.ts'
import { nearest, type Source, type Span } from '../text/index.ts'

/** One row of a table: what stands in each column, and where. */
export interface Row {
  readonly line: number
  /** The words in a column, without blanks about them; '' where it is left empty. */
  text(column: string): string
  /** The number in a column; undefined where it is left empty or, with a finding, where it is none. */
  number(column: string): number | undefined
  /** The number in a column that may not be left empty: 0, with a finding, where it is. */
  needed(column: string): number
  /** Says what is amiss with a cell. */
  amiss(rule: Slug, column: string, message: string, remedy?: string): void
}

/** A reader of tables, which puts what is amiss with them into `findings`. */
export const tableReader =
  (findings: Finding[]) =>
  (source: Source, columns: readonly string[]): readonly Row[] => {
    const records = recordsOf(source, findings)
    const head = records[0]?.cells.map(cell => cell.trim()) ?? []
    const missing = columns.filter(column => !head.includes(column))
    for (const column of missing) {
      const near = nearest(column, head)
      findings.push({
        rule: 'table/no-column',
        severity: 'error',
        at: { source: source.name, start: 0, end: Math.min(source.text.length, records[0]?.end ?? 0) },
        message: `${source.name} has no column "${column}".`,
        remedy:
          near.length > 0
            ? `Is it the column "${near[0]}"?`
            : 'Add it to the first row; its cells may be empty.',
        related: [],
      })
    }
    if (missing.length > 0) return []
    return records.slice(1).map((record, i) => rowOf(source, head, record, i + 2, findings))
  }

interface Record {
  readonly cells: readonly string[]
  readonly start: number
  readonly end: number
}

function recordsOf({ name, text }: Source, findings: Finding[]): readonly Record[] {
  try {
    let end = 0
    const options = { bom: true, skip_empty_lines: true, relax_column_count: true, raw: true } as const
    const read = parse(text, options) as unknown as readonly { record: string[]; raw: string }[]
    return read.map(({ record: cells, raw }) => {
      const start = text.indexOf(raw.trimEnd(), end)
      end = start + raw.trimEnd().length
      return { cells, start, end }
    })
  } catch (error) {
    findings.push({
      rule: 'table/not-read',
      severity: 'error',
      at: { source: name, start: 0, end: 0 },
      message: `${name} is no sound table: ${error instanceof Error ? error.message : error}.`,
      remedy: 'Save it as CSV: commas between cells, double quotes about a cell that holds a comma.',
      related: [],
    })
    return []
  }
}

function rowOf(
  { name: source, text }: Source,
  head: readonly string[],
  { cells, start, end }: Record,
  line: number,
  findings: Finding[],
): Row {
  const spans = spansOf(text, cells, start)
  const spanOf = (column: string): Span => ({ source, ...(spans[head.indexOf(column)] ?? { start, end }) })
  const words = (column: string) => cells[head.indexOf(column)]?.trim() ?? ''
  const amiss: Row['amiss'] = (rule, column, message, remedy) => {
    findings.push({
      rule,
      severity: 'error',
      at: spanOf(column),
      message: `${source}, row ${line}, ${column}: ${message}`,
      ...(remedy === undefined ? {} : { remedy }),
      related: [],
    })
  }
  const number = (column: string) => {
    const written = words(column)
    if (written === '') return undefined
    const value = Number(written)
    if (Number.isFinite(value) && Math.abs(value) < 1e6) return value
    amiss(
      'table/no-number',
      column,
      `"${written}" is no number.`,
      'Write it in plain figures, with a point: 12.40.',
    )
    return undefined
  }
  const needed = (column: string) => {
    if (words(column) === '')
      amiss('table/empty', column, 'a number is due here.', 'Measure it and enter it.')
    return number(column) ?? 0
  }
  return { line, text: words, number, needed, amiss }
}

/** Where each cell stands in the text: they follow each other in order. */
function spansOf(text: string, cells: readonly string[], start: number): { start: number; end: number }[] {
  let from = start
  return cells.map(cell => {
    const written = cell.replaceAll('"', '""')
    const found = Math.max(from, text.indexOf(written, from))
    from = found + written.length
    return { start: found, end: from }
  })
}
