import { type Finding, type Found, inFileOrder } from '../findings/index.ts'
import { unitOf } from '../measure/index.ts'
import { foreAndAftClasses, squareClasses } from '../rig/index.ts'
import { nameKey } from '../syntax/index.ts'
import type { Source } from '../text/index.ts'
import { judgeTables } from './judge.ts'
import { linesOf } from './read-lines.ts'
import { bothSides, sides } from './sides.ts'
import { type Row, tableReader } from './table.ts'
import {
  type Hull,
  type TableName,
  type TableRail,
  type TableSail,
  type TableSpar,
  type Tables,
  type TableThing,
  tableNames,
} from './tables.ts'

/** The rows of each table. */
export type Rows = Readonly<Record<TableName, readonly Row[]>>

const columns: Readonly<Record<TableName, { needed: readonly string[]; other: readonly string[] }>> = {
  hull: { needed: ['key', 'value'], other: ['unit'] },
  spars: {
    needed: ['spar', 'kind', 'mast', 'x0', 'z0', 'x1', 'z1'],
    other: ['length_m', 'dia_mm', 'hoists', 'z_lowered', 'mass_kg', 'note'],
  },
  sails: {
    needed: ['sail', 'type', 'class', 'bent_to'],
    other: [
      ...['foot_to', 'head_w', 'foot_w', 'head_z', 'foot_z', 'roach', 'tack_x', 'tack_z', 'clew_x', 'clew_z'],
      ...['throat_x', 'throat_z', 'head_x', 'headpt_z', 'set_order'],
    ],
  },
  rails: {
    needed: ['rail', 'kind', 'x_first', 'y_first', 'x_last', 'y_last', 'z', 'pins'],
    other: ['side', 'note'],
  },
  lines: {
    needed: ['name', 'kind', 'acts_on', 'rail', 'pin'],
    other: ['id', 'side', 'purchase', 'rope_mm', 'material', 'travel_m', 'hands', 'opposes'],
  },
  leads: { needed: ['line', 'x', 'y', 'z'], other: ['seq', 'what', 'parts'] },
  deck: { needed: ['item', 'kind', 'x0', 'x1', 'y0', 'y1', 'z_top'], other: [] },
}

/**
 * Reads the tables. What is amiss with a cell is an error with its file, row and column; what a row leaves to be given is
 * a note. A table that is not given is empty.
 */
export function readTables(sources: ReadonlyMap<TableName, Source>): Found<Tables> {
  const findings: Finding[] = []
  const read = tableReader(findings)
  const rowsOf = (name: TableName) => {
    const source = sources.get(name)
    return [name, source ? read(source, columns[name].needed, columns[name].other) : []] as const
  }
  const rows = Object.fromEntries(tableNames.map(rowsOf)) as unknown as Rows
  const rails = rows.rails.flatMap(railsOf)
  const value: Tables = {
    hull: hullOf(rows.hull),
    ...withBowsprit(rows.spars.map(sparOf), rows.sails.map(sailOf)),
    rails,
    lines: linesOf(rows.lines, rows.leads, rails),
    deck: rows.deck.flatMap(thingsOf),
  }
  judgeTables(rows, value)
  return { value, findings: inFileOrder(findings, [...sources.values()]) }
}

/** Keys of the hull whose value is a number: metres, and tonnes of displacement. */
const hullUnits: ReadonlyMap<string, string> = new Map([
  ...['lwl', 'lbp', 'length_sparred', 'beam', 'draught', 'clr_x', 'clr_z', 'gm'].map(
    key => [key, 'm'] as const,
  ),
  ...['main_deck_z', 'forecastle_deck_z'].map(key => [key, 'm'] as const),
  ['displacement', 't'],
  ['hands_all', ''],
  ['hands_watch', ''],
])

function hullOf(rows: readonly Row[]): Hull {
  const words = new Map<string, string>()
  const numbers = new Map<string, number>()
  for (const row of rows) {
    const key = row.name('key').replaceAll(' ', '_')
    const due = hullUnits.get(key)
    if (key === 'name') words.set(key, row.text('value'))
    if (key === 'rig') words.set(key, row.text('value').split(',')[0] ?? '')
    if (due === undefined || row.text('value') === '') continue
    // "m aft of FP" is metres; a word that is no unit is refused, lest feet in other words pass for metres.
    const [said = ''] = row.text('unit').split(' ')
    const [unit, wanted] = [unitOf(said), unitOf(due)]
    if (said !== '' && wanted && unit?.dimension !== wanted.dimension)
      row.amiss('table/no-number', 'unit', `"${said}" is no unit for the ${key}.`, `Tell it in ${due}.`)
    const value = row.measure('value', unit ?? wanted, wanted)
    if (value !== undefined) numbers.set(key, value)
  }
  return { words, numbers }
}

const yesOrNo: ReadonlyMap<string, boolean> = new Map([
  ...['', 'no', 'n', 'false', '0'].map(word => [word, false] as const),
  ...['yes', 'y', 'true', '1', 'x'].map(word => [word, true] as const),
])

const kindsOfSpar = words(['mast', 'yard', 'boom', 'gaff', 'bowsprit', 'stay', 'spar'])

function sparOf(row: Row): TableSpar {
  const kind = row.one('kind', kindsOfSpar, 'kind of spar') ?? ''
  return {
    name: row.name('spar'),
    called: kind === 'bowsprit' ? row.text('spar') : undefined,
    kind,
    mast: row.name('mast').replace(/ mast$/, '') || (kind === 'mast' ? 'mast' : ''),
    from: [row.needed('x0'), row.needed('z0')],
    to: [row.needed('x1'), row.needed('z1')],
    length: row.number('length_m'),
    millimetres: row.number('dia_mm'),
    hoists: row.one('hoists', yesOrNo, 'yes or no') ?? false,
    lowered: row.number('z_lowered'),
    mass: row.number('mass_kg'),
    note: row.note('note'),
  }
}

/** A vessel's one bowsprit is "bowsprit" in the language, whatever the tables call it: there and where a sail is set on it. */
function withBowsprit(
  spars: readonly TableSpar[],
  sails: readonly TableSail[],
): Pick<Tables, 'spars' | 'sails'> {
  const [only, another] = spars.filter(({ kind }) => kind === 'bowsprit')
  const isOther = only !== undefined && another === undefined && only.name !== 'bowsprit'
  return {
    spars: spars.map(spar =>
      isOther && spar === only
        ? { ...spar, name: 'bowsprit', called: capitalised(spar.called ?? '') }
        : { ...spar, called: undefined },
    ),
    sails: sails.map(sail => (isOther && sail.on === only.name ? { ...sail, on: 'bowsprit' } : sail)),
  }
}

const capitalised = (words: string) => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`

const classes = words([...squareClasses, ...foreAndAftClasses])

const types = words(['square', 'triangular', 'quadrilateral'])

function sailOf(row: Row): TableSail {
  const type = row.one('type', types, 'type of sail')
  const square = type === 'square'
  const edge = (width: string, height: string) => ({ width: row.needed(width), height: row.needed(height) })
  const corner = (name: string, x: string, z: string) =>
    row.text(x) === '' && row.text(z) === '' ? [] : [{ name, at: [row.needed(x), row.needed(z)] as const }]
  return {
    name: row.name('sail'),
    square,
    class: row.one('class', classes, 'class of sail') ?? '',
    on: row.name('bent_to'),
    footOn: row.name('foot_to'),
    head: square ? edge('head_w', 'head_z') : undefined,
    foot: square ? edge('foot_w', 'foot_z') : undefined,
    roach: row.number('roach') ?? 0,
    corners: square
      ? []
      : [
          ...corner('tack', 'tack_x', 'tack_z'),
          ...corner('throat', 'throat_x', 'throat_z'),
          ...corner(type === 'quadrilateral' ? 'peak' : 'head', 'head_x', 'headpt_z'),
          ...corner('clew', 'clew_x', 'clew_z'),
        ],
    order: row.number('set_order') ?? Number.POSITIVE_INFINITY,
  }
}

/** A rail may have so many pins. */
const mostPins = 200

/** One rail, or the two of a row that is told for both sides. */
function railsOf(row: Row): readonly TableRail[] {
  const side = row.one('side', sides, 'side')
  const z = row.needed('z')
  const rail: TableRail = {
    code: row.text('rail'),
    kind: nameKey(row.kind('kind')),
    side: side === 'port' || side === 'starboard' ? side : undefined,
    first: [row.needed('x_first'), row.needed('y_first'), z],
    last: [row.needed('x_last'), row.needed('y_last'), z],
    pins: row.count('pins', 1, mostPins) ?? 1,
    note: row.note('note'),
  }
  if (row.text('pins') === '')
    row.amiss('table/empty', 'pins', 'a number is due here.', 'Count them and enter it.')
  return side === 'both' ? bothSides.map(one => onSide(rail, one)) : [rail]
}

function onSide(rail: TableRail, side: 'port' | 'starboard'): TableRail {
  const out = ([x, y, z]: TableRail['first']) => [x, Math.abs(y) * (side === 'port' ? -1 : 1), z] as const
  const code = `${rail.code.replace(/-[PS]$/, '')}-${side === 'port' ? 'P' : 'S'}`
  return { ...rail, code, side, first: out(rail.first), last: out(rail.last) }
}

/** A thing on deck; none, with a note, where the language has no words for where it lies. */
function thingsOf(row: Row): readonly TableThing[] {
  const [x0, x1, y0, y1] = [row.needed('x0'), row.needed('x1'), row.needed('y0'), row.needed('y1')]
  const thing: TableThing = {
    name: row.name('item'),
    kind: nameKey(row.kind('kind')) || (row.name('item').split(' ').at(-1) ?? ''),
    x: [Math.min(x0, x1), Math.max(x0, x1)],
    y: [Math.min(y0, y1), Math.max(y0, y1)],
    top: row.needed('z_top'),
  }
  const [, after] = thing.x
  const [port, starboard] = thing.y
  const straddles = port < 0 && starboard > 0 && Math.abs(port + starboard) >= 0.005
  if (after >= 0 && !straddles) return [thing]
  row.leaves(
    'item',
    straddles
      ? 'it lies across the centreline, and not as far to both sides; it is left out.'
      : 'it lies forward of the forward perpendicular; it is left out.',
    'Say it in the text, in parts that the language has words for.',
  )
  return []
}

function words(said: readonly string[]): ReadonlyMap<string, string> {
  return new Map(said.map(word => [nameKey(word), word]))
}
