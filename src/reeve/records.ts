import { CsvError, parse } from 'csv-parse/sync'
import type { Finding } from '../findings/index.ts'
import { lineStarts, type Source } from '../text/index.ts'

/** One row of a table as it stands in its text. */
export interface Record {
  /** As a spreadsheet counts it, from 1, blank rows too. */
  readonly row: number
  readonly cells: readonly Cell[]
  readonly start: number
  readonly end: number
}

export interface Cell {
  readonly words: string
  readonly start: number
  readonly end: number
}

/** The rows that hold anything, cells parted by what parts the first of them: a comma, a semicolon or a tab. */
export function recordsOf(source: Source, findings: Finding[]): readonly Record[] {
  const { text } = source
  try {
    const delimiter = delimiterOf(text)
    const options = {
      delimiter,
      record_delimiter: ['\r\n', '\n', '\r'],
      bom: true,
      relax_column_count: true,
      relax_quotes: true,
      raw: true,
    }
    const read = parse(text, options) as unknown as readonly { record: string[]; raw: string }[]
    let end = 0
    return read.flatMap(({ record, raw }, index) => {
      const written = raw.replace(/[\r\n]+$/, '')
      const start = Math.max(end, text.indexOf(written, end))
      end = start + written.length
      if (record.every(words => words.trim() === '')) return []
      return [{ row: index + 1, cells: cellsOf(text, record, start, end), start, end }]
    })
  } catch (error) {
    findings.push(notRead(source, error))
    return []
  }
}

/** The file of a path: 'lines.csv'. */
export const fileOf = (path: string) => path.split(/[\\/]/).at(-1) ?? path

/** What parts the cells of the first row that holds anything. */
function delimiterOf(text: string): string {
  const first = /\S.*/.exec(text)?.[0].replace(/"[^"]*"/g, '') ?? ''
  const count = (mark: string) => first.split(mark).length
  return [';', '\t'].reduce((most, mark) => (count(mark) > count(most) ? mark : most), ',')
}

/** Where each cell stands in the text: they follow each other in order. */
function cellsOf(text: string, cells: readonly string[], start: number, rowEnd: number): Cell[] {
  let from = start
  return cells.map(words => {
    const written = words.replaceAll('"', '""')
    const [found, length] = [
      [text.indexOf(written, from), written.length],
      [text.indexOf(words, from), words.length],
    ].find(([at = -1]) => at >= 0 && at <= rowEnd) ?? [from, 0]
    from = Math.min(rowEnd, (found ?? from) + (length ?? 0))
    return { words, start: Math.min(rowEnd, found ?? from), end: from }
  })
}

function notRead({ name, text }: Source, error: unknown): Finding {
  const line = error instanceof CsvError && typeof error.lines === 'number' ? error.lines : undefined
  const start = lineStarts(text)[(line ?? 1) - 1] ?? 0
  return {
    rule: 'table/not-read',
    severity: 'error',
    at: { source: name, start, end: start },
    message:
      error instanceof CsvError && error.code === 'CSV_QUOTE_NOT_CLOSED'
        ? `${fileOf(name)} is no sound table: a cell that begins with a quotation mark is never closed.`
        : `${fileOf(name)} is no sound table: ${error instanceof Error ? error.message.replace(/\.$/, '') : error}.`,
    remedy: 'Save it as CSV: commas between cells, double quotes about a cell that holds a comma.',
    related: [],
  }
}
