import type { Finding } from '../findings/index.ts'
import { type Unit, unitOf, unitsOffered } from '../measure/index.ts'
import { nearest, type Source } from '../text/index.ts'
import { fileOf, type Record } from './records.ts'

/** Columns without which nothing is missed. */
const mayBeMissed = new Set(['note', 'unit', 'seq', 'id', 'side', 'what'])

/** Where a column stands, and the unit of its numbers where they have one. */
export interface Column {
  readonly at: number
  readonly unit: Unit | undefined
}

/** Columns of lengths whose name tells no unit: metres. */
const metreColumns =
  /^([xyz][01]|[xyz]|z_top|z_lowered|roach|[xy]_(first|last)|(head|foot)_[wz]|(tack|clew|throat)_[xz]|head_x|headpt_z)$/

/** The unit that a column's numbers are told in: its name's own, metres for places; undefined for counts and words. */
export function dueUnit(column: string): Unit | undefined {
  const [, ending] = /_(m|mm|kg)$/.exec(column) ?? []
  return unitOf(ending ?? (metreColumns.test(column) ? 'm' : ''))
}

/**
 * The columns of a table by the names that `known` has for them: small letters, blanks as "_". A column may tell another unit of
 * its kind than is due, as in "x0 (ft)" or "dia_in". What is amiss with the first row goes to `findings`.
 */
export function columnsOf(
  source: Source,
  head: Record | undefined,
  known: { readonly needed: readonly string[]; readonly other: readonly string[] },
  findings: Finding[],
): ReadonlyMap<string, Column> | undefined {
  const columns = new Map<string, Column>()
  const say = (
    severity: Finding['severity'],
    rule: Finding['rule'],
    at: number | undefined,
    message: string,
    remedy: string,
  ) => {
    const cell = at === undefined ? undefined : head?.cells[at]
    findings.push({
      rule,
      severity,
      at: { source: source.name, start: cell?.start ?? head?.start ?? 0, end: cell?.end ?? head?.end ?? 0 },
      message,
      remedy,
      related: [],
    })
  }
  const names = [...known.needed, ...known.other]
  for (const [at, { words }] of head?.cells.entries() ?? []) {
    const said = saidBy(words)
    const name =
      names.find(one => one === said.whole) ??
      names.find(one => one === said.base || baseOf(one) === said.base)
    if (!name) continue
    const due = dueUnit(name)
    const unit = said.unit === undefined || name === said.whole ? due : unitOf(said.unit)
    if (columns.has(name))
      say(
        'error',
        'table/twice',
        at,
        `${fileOf(source.name)}, row ${head?.row}: the column "${name}" stands there twice.`,
        'Keep one of them.',
      )
    else if (due && unit?.dimension !== due.dimension)
      say(
        'error',
        'table/no-number',
        at,
        `${fileOf(source.name)}, row ${head?.row}: "${said.unit}" is no unit for the column "${name}".`,
        `Tell it in ${due.symbol}, or in another of ${unitsOffered[due.dimension]}.`,
      )
    columns.set(name, { at, unit })
  }
  const untold = (name: string) => !columns.has(name)
  const near = (name: string, otherwise: string) => {
    const [first] = nearest(name, head?.cells.map(({ words }) => words.trim()) ?? [])
    return first === undefined ? otherwise : `Is it the column "${first}"?`
  }
  const missing = known.needed.filter(untold)
  for (const name of missing)
    say(
      'error',
      'table/no-column',
      undefined,
      `${fileOf(source.name)} has no column "${name}".`,
      near(name, 'Add it to the first row; its cells may be empty.'),
    )
  for (const name of known.other.filter(untold))
    if (!mayBeMissed.has(name))
      say(
        'note',
        'table/left-out',
        undefined,
        `${fileOf(source.name)} has no column "${name}"; what it tells is left to be given.`,
        near(name, 'Add it to the first row, or say it in the text.'),
      )
  return missing.length > 0 ? undefined : columns
}

/** 'length_m' without its unit. */
const baseOf = (name: string) => (dueUnit(name) ? name.replace(/_(m|mm|kg)$/, '') : name)

/** A heading: "X0 (ft)" is x0 in feet, "dia in" and "dia_in" a diameter in inches. */
function saidBy(words: string): { whole: string; base: string; unit: string | undefined } {
  const [, name = '', bracketed] = /^([^([]*?)\s*(?:[([](.*?)[)\]])?\s*$/.exec(words.trim()) ?? []
  const whole = name.toLowerCase().replace(/[\s_-]+/g, '_')
  const [, base = whole, ending] = /^(.*)_([a-z]+)$/.exec(whole) ?? []
  if (bracketed !== undefined) return { whole: '', base: whole, unit: bracketed.trim() }
  const unit = ending === undefined ? undefined : unitOf(ending)
  return { whole, base: unit ? base : whole, unit: unit && ending }
}
