import type { Finding, Found } from '../findings/index.ts'
import type { Source } from '../text/index.ts'
import { judgeTables, type Rows } from './judge.ts'
import { type Row, tableReader } from './table.ts'
import {
  type Space,
  type TableLine,
  type TableName,
  type TableRail,
  type TableSail,
  type TableSpar,
  type Tables,
  type TableThing,
  tableNames,
} from './tables.ts'

const columns: Readonly<Record<TableName, readonly string[]>> = {
  hull: ['key', 'value'],
  spars: ['spar', 'kind', 'mast', 'x0', 'z0', 'x1', 'z1', 'length_m', 'dia_mm'],
  sails: ['sail', 'type', 'class', 'bent_to'],
  rails: ['rail', 'kind', 'side', 'x_first', 'y_first', 'x_last', 'y_last', 'z', 'pins'],
  lines: ['id', 'name', 'kind', 'acts_on', 'rail', 'pin', 'purchase', 'rope_mm', 'material'],
  leads: ['line', 'x', 'y', 'z', 'what', 'parts'],
  deck: ['item', 'kind', 'x0', 'x1', 'y0', 'y1', 'z_top'],
}

/** Reads the tables. What is amiss with a cell is an error with its file, row and column; a table that is not given is empty. */
export function readTables(sources: ReadonlyMap<TableName, Source>): Found<Tables> {
  const findings: Finding[] = []
  const read = tableReader(findings)
  const rowsOf = (name: TableName) => {
    const source = sources.get(name)
    return [name, source ? read(source, columns[name]) : []] as const
  }
  const rows = Object.fromEntries(tableNames.map(rowsOf)) as unknown as Rows
  const leads = leadsOf(rows.leads)
  const value: Tables = {
    hull: new Map(
      rows.hull.map(row => [
        row.text('key'),
        { value: row.text('value'), number: Number(row.text('value')) },
      ]),
    ),
    spars: rows.spars.map(sparOf),
    sails: rows.sails.map(sailOf),
    rails: rows.rails.map(railOf),
    lines: rows.lines.map(row => lineOf(row, leads.get(row.text('id')) ?? [])),
    deck: rows.deck.map(thingOf),
  }
  judgeTables(rows, value)
  return { value, findings }
}

function leadsOf(rows: readonly Row[]): ReadonlyMap<string, TableLine['lead']> {
  const leads = new Map<string, TableLine['lead'][number][]>()
  for (const row of rows) {
    const at: Space = [row.needed('x'), row.needed('y'), row.needed('z')]
    const lead = leads.get(row.text('line')) ?? []
    lead.push({ at, what: row.text('what'), parts: row.number('parts') ?? 1 })
    leads.set(row.text('line'), lead)
  }
  return leads
}

const sparOf = (row: Row): TableSpar => ({
  name: row.text('spar'),
  kind: row.text('kind'),
  mast: row.text('mast'),
  from: [row.needed('x0'), row.needed('z0')],
  to: [row.needed('x1'), row.needed('z1')],
  length: row.number('length_m'),
  millimetres: row.number('dia_mm'),
  hoists: row.text('hoists') === 'yes',
  lowered: row.number('z_lowered'),
  mass: row.number('mass_kg'),
  note: row.text('note'),
})

function sailOf(row: Row): TableSail {
  const square = row.text('type') === 'square'
  const edge = (width: string, height: string) => ({ width: row.needed(width), height: row.needed(height) })
  const corner = (name: string, x: string, z: string) =>
    row.text(x) === '' && row.text(z) === '' ? [] : [{ name, at: [row.needed(x), row.needed(z)] as const }]
  const four = row.text('type') === 'quadrilateral'
  return {
    name: row.text('sail'),
    square,
    class: row.text('class'),
    on: row.text('bent_to'),
    footOn: row.text('foot_to'),
    head: square ? edge('head_w', 'head_z') : undefined,
    foot: square ? edge('foot_w', 'foot_z') : undefined,
    roach: row.number('roach') ?? 0,
    corners: square
      ? []
      : [
          ...corner('tack', 'tack_x', 'tack_z'),
          ...corner('throat', 'throat_x', 'throat_z'),
          ...corner(four ? 'peak' : 'head', 'head_x', 'headpt_z'),
          ...corner('clew', 'clew_x', 'clew_z'),
        ],
    order: row.number('set_order') ?? Number.POSITIVE_INFINITY,
  }
}

const railOf = (row: Row): TableRail => ({
  code: row.text('rail'),
  kind: row.text('kind'),
  side: row.text('side'),
  first: [row.needed('x_first'), row.needed('y_first'), row.needed('z')],
  last: [row.needed('x_last'), row.needed('y_last'), row.needed('z')],
  pins: row.needed('pins'),
  note: row.text('note'),
})

function lineOf(row: Row, lead: TableLine['lead']): TableLine {
  const name = row.text('name')
  const [, words = name, side] = /^(.*) (port|starboard)$/.exec(name) ?? []
  return {
    id: row.text('id'),
    words,
    side: side as TableLine['side'],
    kind: row.text('kind'),
    actsOn: row.text('acts_on'),
    rail: row.text('rail'),
    pin: row.needed('pin'),
    purchase: row.text('purchase').split('+').filter(Boolean),
    millimetres: row.needed('rope_mm'),
    material: row.text('material'),
    travel: row.number('travel_m'),
    hands: row.number('hands'),
    against: row.text('opposes').split(';').filter(Boolean),
    lead,
  }
}

const thingOf = (row: Row): TableThing => ({
  name: row.text('item'),
  kind: row.text('kind'),
  x: [row.needed('x0'), row.needed('x1')],
  y: [row.needed('y0'), row.needed('y1')],
  top: row.needed('z_top'),
})
