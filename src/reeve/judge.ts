import { nameKey } from '../syntax/index.ts'
import type { Rows } from './read-tables.ts'
import type { Row } from './table.ts'
import type { Tables } from './tables.ts'

/** Says what the tables can't mean: names that no table declares, things given twice, pins that a rail doesn't have. */
export function judgeTables(rows: Rows, { spars, sails, rails }: Tables): void {
  const masts = spars.filter(({ kind }) => kind === 'mast').flatMap(({ mast }) => [mast, `${mast} mast`])
  const spread = new Set([
    'bowsprit',
    ...rows.spars.map(row => row.name('spar')),
    ...sails.map(({ name }) => name),
  ])
  const worked = new Set([...spread, ...masts])
  for (const row of rows.sails) {
    named(row, 'bent_to', spread, 'spar or stay')
    if (row.text('foot_to') !== '') named(row, 'foot_to', spread, 'spar')
  }
  for (const row of rows.lines) if (row.text('acts_on') !== '') named(row, 'acts_on', worked, 'sail or spar')
  pinsOf(rows.lines, rails)
  sidesOf(rows.rails)
  notTooMany(rows.rails)
  once(rows.spars, 'spar')
  once(rows.sails, 'sail')
  once(rows.rails, 'rail')
  once(rows.lines, 'id', { mayBeEmpty: true })
  onceOf(rows.lines, 'name', row =>
    isSided(row) ? `${row.name('name')}, ${row.name('side')}` : row.name('name'),
  )
  for (const row of rows.deck) if (row.name('item') === '') empty(row, 'item')
}

const isSided = (row: Row) => /^(p|port|s|starboard|stbd)$/.test(row.name('side'))

function named(row: Row, column: string, known: ReadonlySet<string>, what: string): void {
  const name = row.name(column)
  if (!known.has(name))
    row.amiss('table/unknown', column, `there is no ${what} "${name}".`, row.meant(name, [...known]))
}

/** Every line's pin is one that its rail has. */
function pinsOf(rows: readonly Row[], rails: Tables['rails']): void {
  const pinsOn = new Map(
    rails.flatMap(({ code, pins }) => [
      [nameKey(code), { code, pins }] as const,
      [nameKey(code.replace(/-[PS]$/, '')), { code, pins }] as const,
    ]),
  )
  for (const row of rows) {
    const rail = pinsOn.get(row.name('rail'))
    const pin = row.text('rail') === '' || row.text('pin') === '' ? undefined : row.number('pin')
    if (rail && pin !== undefined && !(Number.isInteger(pin) && pin >= 1 && pin <= rail.pins))
      row.amiss('table/no-pin', 'pin', `rail ${row.text('rail')} has ${rail.pins} pins, and no pin ${pin}.`)
  }
}

/** More pins than this in all are no vessel's. */
const mostPins = 5000

function notTooMany(rows: readonly Row[]): void {
  let sum = 0
  for (const row of rows) {
    const before = sum
    sum += row.text('pins') === '' ? 0 : (row.number('pins') ?? 0)
    if (before <= mostPins && sum > mostPins)
      row.amiss('table/no-number', 'pins', `at most ${mostPins} pins in all are read, and this makes ${sum}.`)
  }
}

/** A rail lies on the side that it says. */
function sidesOf(rows: readonly Row[]): void {
  for (const row of rows) {
    const said = /^(p|port)$/.test(row.name('side')) ? 1 : isSided(row) ? -1 : 0
    for (const column of said === 0 ? [] : ['y_first', 'y_last']) {
      const y = row.text(column) === '' ? undefined : row.number(column)
      if (y !== undefined && y * said > 0)
        row.amiss(
          'table/wrong-side',
          column,
          `its side is ${said > 0 ? 'port' : 'starboard'}, and y counts to starboard.`,
          'Mend the side, or the sign.',
        )
    }
  }
}

const empty = (row: Row, column: string) =>
  row.amiss('table/empty', column, 'a name is due here.', 'Enter it.')

const once = (rows: readonly Row[], column: string, { mayBeEmpty = false } = {}) =>
  onceOf(rows, column, row => row.name(column), mayBeEmpty)

function onceOf(rows: readonly Row[], column: string, keyOf: (row: Row) => string, mayBeEmpty = false): void {
  const seen = new Map<string, number>()
  for (const row of rows) {
    const key = keyOf(row)
    const before = seen.get(key)
    if (row.name(column) === '') {
      if (!mayBeEmpty) empty(row, column)
    } else if (before !== undefined)
      row.amiss(
        'table/twice',
        column,
        `"${row.text(column)}" stands in row ${before} already.`,
        'Keep one of them, or name it anew.',
      )
    else seen.set(key, row.row)
  }
}
