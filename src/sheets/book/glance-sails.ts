import type { Order } from '../../evolve/index.ts'
import type { Sail } from '../../rig/index.ts'
import { fitted, words } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { columnHead, linkTo, rowHead, tagged } from '../tagged.ts'
import type { Typeface } from '../typeface.ts'
import type { Book } from './book.ts'
import type { GlancePart, GlanceSection } from './glance-page.ts'
import { liftedNote, liftedSails } from './lifted-words.ts'
import { live } from './page.ts'
import { orderKey } from './page-key.ts'
import { level, paragraph } from './page-parts.ts'
import { black, rule, type } from './type.ts'

const columns = [
  { heading: 'Sail', x: 0 },
  { heading: 'Your lines', x: 61 },
  { heading: 'Others’', x: 75 },
  { heading: 'To set', x: 89 },
  { heading: 'To douse', x: 105 },
  { heading: 'Page', x: live.width },
] as const

/** What each sail of the station wants: its lines, and the hands of its heaviest phase. */
export function glanceSails(book: Book): GlanceSection | undefined {
  const { sails } = book.lines
  if (sails.length === 0) return undefined
  const rows = [
    ...sails.map(sail => rowOf(top => sailRow(sail, top, book))),
    ...liftedSails(book).map(sail => rowOf(top => liftedRow(sail, top, book))),
  ]
  return {
    heading: 'What each sail wants, in hands',
    isTable: true,
    parts: [headRow(book), ...rows.slice(0, -1), ...rows.slice(-1).map(row => under(row, footnote(book)))],
  }
}

const rowOf = (draw: (top: number) => Mark): GlancePart => ({ height: 4.9, draw: top => [draw(top)] })

// The last row and the caution under it stay on one page.
const under = (row: GlancePart, note: GlancePart): GlancePart => ({
  height: row.height + note.height,
  draw: top => [...row.draw(top), ...note.draw(top + row.height)],
})

function footnote({ setting: { ruler } }: Book): GlancePart {
  const told = 'Most hands of any phase, hauling, easing and aloft, of all stations: planning figures.'
  return {
    height: 5.6,
    draw: top => paragraph([words(told, type.noteItalic)], top + 4.6, ruler, { led: 4.1 }).marks,
  }
}

const table = 'sails at a glance'

function headRow({ setting: { ruler } }: Book): GlancePart {
  return {
    height: 6,
    draw: top => {
      const cells = columns.map(({ heading, x }, index) =>
        columnHead([lettered(ruler, { x, y: top + 4.2 }, heading, type.tableHead, black, anchored(index))]),
      )
      const row = tagged('TR', cells)
      return [
        tagged('Table', [tagged('THead', [row], { key: `${table} head` })], { key: table }),
        level(0, live.width, top + 5.8, rule.frame),
      ]
    },
  }
}

const anchored = (index: number) => (index === 0 ? {} : ({ anchor: 'end' } as const))

function sailRow(sail: Sail, top: number, book: Book): Mark {
  const { rig, station, setting } = book
  const { ruler } = setting
  const lines = rig.lines.filter(line => line.host?.kind === 'sail' && line.host.name === sail.name)
  const own = lines.filter(line => line.station === station.name).length
  const orders = book.evolutions.ordersAt.get(sail.name)
  const page = book.pageOf(orderKey(sail.name, 'set')) ?? book.pageOf(orderKey(sail.name, 'douse'))
  const values = [String(own), String(lines.length - own), most(orders?.set), most(orders?.douse)]
  const y = top + 3.8
  const cell = (told: string, index: number, face: Typeface): Mark =>
    lettered(ruler, { x: columns[index]?.x ?? 0, y }, told, face, black, anchored(index))
  const name = nameOf(sail, book)
  const pageCell =
    page === undefined
      ? []
      : [linkTo(page, `${sail.label}, page ${page}`, [cell(String(page), 5, type.note)])]
  return bodyRow(top, [
    rowHead([cell(name.words, 0, name.type)]),
    ...values.map((value, index) => tagged('TD', [cell(value, index + 1, type.note)])),
    tagged('TD', pageCell),
  ])
}

/** A sail that is sent down, and why, in place of its figures. */
function liftedRow(sail: Sail, top: number, book: Book): Mark {
  const { ruler } = book.setting
  const y = top + 3.8
  const name = nameOf(sail, book)
  const label = lettered(ruler, { x: 0, y }, `${name.words} `, name.type, black)
  const note = fitted(
    liftedNote(sail, book.rig),
    [type.noteItalic, { ...type.noteItalic, size: 8 }],
    live.width - label.width - 2,
    ruler,
  )
  return bodyRow(top, [
    rowHead([label]),
    tagged('TD', [lettered(ruler, { x: live.width, y }, note.words, note.type, black, { anchor: 'end' })], {
      columns: columns.length - 1,
    }),
  ])
}

const nameOf = (sail: Sail, { setting: { ruler } }: Book) =>
  fitted(sail.label, [type.noteStrong, { ...type.noteStrong, size: 8 }], 46, ruler)

const bodyRow = (top: number, cells: readonly Mark[]): Mark =>
  tagged(
    'Table',
    [
      tagged('TBody', [tagged('TR', cells)], { key: `${table} rows` }),
      level(0, live.width, top + 4.9, rule.tableRow),
    ],
    { key: table },
  )

// Hands of the phase that takes most: hauling, easing and aloft together, of whatever station.
function most(order: Order | undefined): string {
  if (!order) return '–'
  const each = order.phases.map(({ hands }) =>
    hands.hauling.known ? hands.hauling.value + hands.easing + hands.aloft : undefined,
  )
  if (each.some(hands => hands === undefined)) return '–'
  return String(Math.max(0, ...each.map(hands => hands ?? 0)))
}
