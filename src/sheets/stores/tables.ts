import { type Figure, type Kilograms, known, type Metres, metres, workedFrom } from '../../measure/index.ts'
import type { Stores } from '../../reckon/index.ts'
import type { Vessel } from '../../rig/index.ts'
import { cell, column, plainNumber, type Shown, type TableUnits, tableUnits } from '../reckoning/units.ts'
import { type Table, words } from '../table.ts'

const whole = plainNumber(0)

/** What is to be ordered, as tables in the units of the vessel's papers; a table without rows is left out. */
export function storesTables(stores: Stores, vessel: Vessel): readonly Table[] {
  const units = tableUnits(vessel)
  const tables = [
    cordageTable(stores, units),
    cutsTable(stores, units),
    blocksTable(stores, units),
    pinsTable(stores, units),
    thimblesTable(stores, units),
    canvasTable(stores, units),
    totalsTable(stores, units),
  ]
  return tables.filter(table => table.rows.length > 0)
}

const caution =
  'Planning figures: measure before you cut. The vessel’s own documents and licensed practice govern what is rigged.'

function cordageTable({ cordage, coil, unordered }: Stores, units: TableUnits): Table {
  return {
    id: 'cordage',
    title: 'Cordage',
    columns: [
      column('rope'),
      column('thick', units.rope),
      column('cuts', whole),
      column('length', units.length),
      column('weight', units.mass),
      column('coils', whole),
      column('no fewer than', whole),
      column('left over', units.length),
      column('to special length', whole),
    ],
    rows: cordage.map(({ material, diameter, cuts, length, mass, cutting, special }) => {
      const used = cutting.coils.flat().reduce((sum, piece) => sum + piece, 0)
      return [
        words(material),
        cell(known(diameter), units.rope),
        cell(known(cuts.length), whole),
        cell(known(length), units.length),
        cell(mass, units.mass),
        cell(known(cutting.coils.length), whole),
        cell(known(cutting.atLeast), whole),
        cell(known(metres(cutting.coils.length * coil - used)), units.length),
        cell(known(special.length), whole),
      ]
    }),
    notes: [
      `From coils of ${shown(coil, units)}. Lengths are those to cut, with what is left at the pin, and no more: add for wear.`,
      ...unordered.map(({ line, because }) => `Not ordered: ${line}. ${because}`),
      caution,
    ],
  }
}

const shown = (length: Metres, { length: { si, unit } }: TableUnits) =>
  `${Number((length / si).toFixed(1))} ${unit}`

/** Which line is cut from which coil, in the order to cut. */
function cutsTable({ cordage }: Stores, units: TableUnits): Table {
  const rows = cordage.flatMap(({ material, diameter, cuts, cutting, special }) => {
    const left = cuts.filter(cut => !special.includes(cut))
    const row = (coil: string, { line, length }: { readonly line: string; readonly length: Metres }) => [
      words(material),
      cell(known(diameter), units.rope),
      words(coil),
      words(line),
      cell(known(length), units.length),
    ]
    return [
      ...special.map(cut => row('special', cut)),
      ...cutting.coils.flatMap((pieces, i) =>
        pieces.flatMap(piece => {
          const at = left.findIndex(cut => cut.length === piece)
          const [cut] = at < 0 ? [] : left.splice(at, 1)
          return cut ? [row(`coil ${i + 1}`, cut)] : []
        }),
      ),
    ]
  })
  return {
    id: 'cuts',
    title: 'Cuts, coil by coil',
    columns: [
      column('rope'),
      column('thick', units.rope),
      column('from'),
      column('line'),
      column('length', units.length),
    ],
    rows,
    notes: [caution],
  }
}

const blockNames = ['', 'single', 'double', 'treble', 'fourfold', 'fivefold']

function blocksTable({ blocks }: Stores, units: TableUnits): Table {
  return {
    id: 'blocks',
    title: 'Blocks',
    columns: [
      column('block'),
      column('for rope', units.rope),
      column('shell', units.rope),
      column('count', whole),
      column('of'),
    ],
    rows: blocks.map(({ sheaves, rope, size, count, lines }) => [
      words(blockNames[sheaves] ?? `${sheaves} sheaves`),
      cell(known(rope), units.rope),
      cell(known(size), units.rope),
      cell(known(count), whole),
      words(lines.join('; ')),
    ]),
    notes: [
      'A shell twelve times the rope: the old rule (R. C. Anderson, second-hand). Sheaves let into spars are not blocks.',
    ],
  }
}

function pinsTable({ pins }: Stores, units: TableUnits): Table {
  return {
    id: 'pins',
    title: 'Belaying pins',
    columns: [column('on'), column('thick', units.rope), column('long', units.rope), column('count', whole)],
    rows: pins.map(({ diameter, length, count, rails }) => [
      words(rails.join(', ')),
      cell(known(diameter), units.rope),
      cell(known(length), units.rope),
      cell(known(count), whole),
    ]),
    notes: [
      'One and a half times as thick and fourteen times as long as the thickest rope on the rail or its mirror: common practice, no source.',
    ],
  }
}

const thimblesTable = ({ thimbles }: Stores, units: TableUnits): Table => ({
  id: 'thimbles',
  title: 'Thimbles',
  columns: [column('thimble'), column('for rope', units.rope), column('count', whole)],
  rows: thimbles.map(({ rope, count }) => [
    words('thimble'),
    cell(known(rope), units.rope),
    cell(known(count), whole),
  ]),
  notes: ['One where each rope ends aloft: common practice, no source.'],
})

function canvasTable({ canvas }: Stores, units: TableUnits): Table {
  return {
    id: 'canvas',
    title: 'Canvas',
    columns: [
      column('number', whole),
      column('of'),
      column('wide', units.rope),
      column('area', units.area),
      column('cloth', units.length),
      column('weight', units.mass),
      column('sails'),
    ],
    rows: canvas.map(({ number, list, width, area, cloth, mass, sails }) => [
      cell(known(number), whole),
      words(list),
      cell(known(width), units.rope),
      cell(known(area), units.area),
      cell(known(cloth), units.length),
      cell(mass, units.mass),
      words(sails.join('; ')),
    ]),
    notes: [
      'As the text says; else a number by the kind of sail. A tenth more for seams and tablings: common practice, no source. Two of each studdingsail.',
    ],
  }
}

/** What it all comes to. */
function totalsTable({ cordage, blocks, pins, thimbles, canvas }: Stores, units: TableUnits): Table {
  const count = (of: readonly { readonly count: number }[]) =>
    known(of.reduce((sum, one) => sum + one.count, 0))
  const massOf = (of: readonly { readonly mass: Figure<Kilograms> }[]) =>
    workedFrom(
      of.map(({ mass }) => mass),
      (...all: Kilograms[]) => all.reduce<number>((sum, mass) => sum + mass, 0),
    )
  const lengthOf = (of: readonly Metres[]) => known(of.reduce<number>((sum, length) => sum + length, 0))
  const rows: readonly (readonly [string, Figure<number>, Shown])[] = [
    ['Rope, new and dry', lengthOf(cordage.map(({ length }) => length)), units.length],
    ['Its weight', massOf(cordage), units.mass],
    ['Coils', known(cordage.reduce((sum, { cutting }) => sum + cutting.coils.length, 0)), whole],
    ['Blocks', count(blocks), whole],
    ['Belaying pins', count(pins), whole],
    ['Thimbles', count(thimbles), whole],
    ['Cloth', lengthOf(canvas.map(({ cloth }) => cloth)), units.length],
    ['Its weight', massOf(canvas), units.mass],
  ]
  return {
    id: 'totals',
    title: 'In all',
    columns: [column('what'), column('amount'), column('unit')],
    rows:
      cordage.length + canvas.length > 0
        ? rows.map(([name, figure, shown]) => [words(name), cell(figure, shown), words(shown.unit)])
        : [],
    notes: [caution],
  }
}
