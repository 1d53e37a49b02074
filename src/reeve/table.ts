import type { Finding, Severity, Slug } from '../findings/index.ts'
import { figureAt, type Unit } from '../measure/index.ts'
import { nameKey } from '../syntax/index.ts'
import { nearest, type Source, type Span } from '../text/index.ts'
import { type Column, columnsOf, dueUnit } from './columns.ts'
import { fileOf, type Record, recordsOf } from './records.ts'
import { isPlain } from './spoken.ts'

/** One row of a table: what stands in each column, and where. */
export interface Row {
  /** As a spreadsheet counts it, from 1. */
  readonly row: number
  /** Whether the table has a column at all. */
  has(column: string): boolean
  /** The words in a column, one blank between them; '' where it is left empty. */
  text(column: string): string
  /** The same as the name of a thing aboard, in small letters. */
  name(column: string): string
  /** The same as a word of a kind, which the language can't have between quotes. */
  kind(column: string): string
  /** The same as a remark, cut short where it is very long. */
  note(column: string): string
  /** Names in a column, parted by any of `marks`. */
  list(column: string, marks: RegExp): readonly string[]
  /** The number in a column, in the unit of its name; undefined where it is left empty or, with a finding, where it is none. */
  number(column: string): number | undefined
  /** The number in a column that tells its unit elsewhere, in the unit that is due. */
  measure(column: string, unit: Unit | undefined, due: Unit | undefined): number | undefined
  /** The number in a column that may not be left empty: 0, with a finding, where it is. */
  needed(column: string): number
  /** The number in a column that counts things: whole, and from `least` to `most`. */
  count(column: string, least: number, most: number): number | undefined
  /** What a word in a column stands for; with a finding where it stands for nothing. */
  one<T>(column: string, words: ReadonlyMap<string, T>, what: string): T | undefined
  /** What was meant by a name that none of `known` is. */
  meant(name: string, known: readonly string[]): string
  /** Says what is amiss with a cell. */
  amiss(rule: Slug, column: string, message: string, remedy?: string): void
  /** Says what a row leaves to be given. */
  leaves(column: string, message: string, remedy: string): void
}

/** More rows than this are no vessel's; of leads, which are points, ten times as many. */
const mostRows = 2000

/** A name longer than this is no name. */
const longestName = 120

/** A reader of tables, which puts what is amiss with them into `findings`. */
export const tableReader =
  (findings: Finding[]) =>
  (source: Source, needed: readonly string[], other: readonly string[]): readonly Row[] => {
    const [head, ...records] = recordsOf(source, findings)
    if (!head && findings.some(({ at }) => at.source === source.name)) return []
    const columns = columnsOf(source, head, { needed, other }, findings)
    if (!columns) return []
    const most = needed.includes('line') ? 10 * mostRows : mostRows
    if (records.length <= most) return records.map(record => rowOf(source, columns, record, findings))
    findings.push({
      rule: 'table/not-read',
      severity: 'error',
      at: { source: source.name, start: 0, end: 0 },
      message: `${fileOf(source.name)} has ${records.length} rows, and at most ${most} are read.`,
      remedy: 'Give the tables of one vessel.',
      related: [],
    })
    return []
  }

function rowOf(
  { name: source }: Source,
  columns: ReadonlyMap<string, Column>,
  { cells, start, end, row }: Record,
  findings: Finding[],
): Row {
  const cellOf = (column: string) => cells[columns.get(column)?.at ?? -1]
  const spanOf = (column: string): Span => {
    const cell = cellOf(column)
    return { source, start: cell?.start ?? start, end: cell?.end ?? end }
  }
  const say =
    (severity: Severity) =>
    (rule: Slug, column: string, message: string, remedy?: string): void => {
      findings.push({
        rule,
        severity,
        at: spanOf(column),
        message: `${fileOf(source)}, row ${row}, ${column}: ${message}`,
        ...(remedy === undefined ? {} : { remedy }),
        related: [],
      })
    }
  const amiss = say('error')
  const meant = (name: string, known: readonly string[]) =>
    findings.length > mostOffered ? mend : oneOf(name, known)
  const written = (column: string) => plain(cellOf(column)?.words ?? '')
  const text = (column: string) => {
    const words = plain(written(column).replaceAll('"', ''))
    if (words.length <= longestName) return words
    amiss(
      'table/no-name',
      column,
      `${shown(words)} is too long for a name.`,
      `Use ${longestName} letters at most.`,
    )
    return ''
  }
  const measure: Row['measure'] = (column, unit, due) => {
    const words = written(column)
    if (words === '') return undefined
    const value = numberIn(words, unit, due)
    if (value === undefined) amiss('table/no-number', column, `${shown(words)} is no number.`, plainFigures)
    return value
  }
  const number = (column: string) => measure(column, columns.get(column)?.unit, dueUnit(column))
  return {
    row,
    has: column => columns.has(column),
    text,
    name: column => nameKey(text(column)),
    kind: column => {
      const said = text(column)
      if (said === '' || said.split(' with ').every(isPlain)) return said
      amiss('table/no-name', column, `${shown(said)} is no kind.`, 'Say it in plain words.')
      return ''
    },
    note: column => cut(written(column)),
    list: (column, marks) =>
      written(column)
        .split(marks)
        .map(name => nameKey(name).slice(0, longestName))
        .filter(Boolean),
    number,
    measure,
    needed: column => {
      if (written(column) === '')
        amiss('table/empty', column, 'a number is due here.', 'Measure it and enter it.')
      return number(column) ?? 0
    },
    count: (column, least, most) => {
      const value = number(column)
      if (value === undefined || (Number.isInteger(value) && value >= least && value <= most)) return value
      amiss('table/no-number', column, `a whole number from ${least} to ${most} is due here, not ${value}.`)
      return undefined
    },
    one: (column, words, what) => {
      const said = nameKey(text(column))
      const found = words.get(said)
      if (found === undefined)
        amiss('table/unknown', column, `there is no ${what} ${shown(said)}.`, meant(said, [...words.keys()]))
      return found
    },
    meant,
    amiss,
    leaves: say('note').bind(undefined, 'table/left-out'),
  }
}

const plainFigures = 'Write it in plain figures, with a point: 12.40.'

/** Without blanks about it, and with one for every stretch of blanks, line ends and marks that are no letters. */
const plain = (words: string) => words.replace(/[\p{Z}\p{C}]+/gu, ' ').trim()

const cut = (words: string) => (words.length > 160 ? `${words.slice(0, 160)} ...` : words)

const shown = (words: string) => (words.length > 40 ? `"${words.slice(0, 40)}..."` : `"${words}"`)

/** Behind so many findings no near names are looked for any more. */
const mostOffered = 200
const mend = 'Mend the name, or enter the thing in its own table.'

function oneOf(name: string, known: readonly string[]): string {
  const near = nearest(name, known)
  if (near.length > 0) return `Is it "${near[0]}"?`
  return known.length <= 12 ? `It is one of ${known.join(', ')}.` : mend
}

/** A number in the unit that is due; in `unit` where it tells none of its own. Undefined where the words are no number. */
function numberIn(words: string, unit: Unit | undefined, due: Unit | undefined): number | undefined {
  const figure = figureAt(words.replace(/^([-−]?)([.,])/, '$10$2'), 0)
  if (!figure || figure.written.length < words.length || !isSound(figure)) return undefined
  if (figure.dimension !== undefined && figure.dimension !== due?.dimension) return undefined
  const si = figure.dimension === undefined ? figure.value * (unit?.si ?? 1) : figure.value
  return Math.round((si / (due?.si ?? 1)) * 1e9) / 1e9
}

const isSound = ({ fault }: { readonly fault: string | undefined }) =>
  fault === undefined || fault === 'negative'
