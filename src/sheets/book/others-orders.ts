import type { Order, OrderPhase, OrderRow } from '../../evolve/index.ts'
import type { Finding, Found } from '../../findings/index.ts'
import type { Sail } from '../../rig/index.ts'
import {
  atMost,
  type DrawnPiece,
  fitted,
  flow,
  gap,
  type Piece,
  type SetLine,
  setLines,
  words,
} from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { artifact, columnHead, rowHead, tagged } from '../tagged.ts'
import { actionMark, actWord } from './action-mark.ts'
import { addressPiece } from './address.ts'
import type { Book } from './book.ts'
import { type Entry, entriesOf } from './order-entry.ts'
import { lowered } from './order-names.ts'
import { quoted } from './order-under.ts'
import { live, type PageBody } from './page.ts'
import { continuedTitle, level, pageTitle, subtitle } from './page-parts.ts'
import { helpedSails, isOwn, ordersOf, rowsOf } from './station-sails.ts'
import { tackKey } from './tack-key.ts'
import { black, leading, rule, type } from './type.ts'

const title = 'In other stations’ orders'
const lead =
  'Your part when others set or douse a sail that has no page in this book. The word comes from them; say it back.'

/**
 * What a station does in the orders of sails that are others': its braces while they hoist, its lines at their
 * rails. One table in place of a spread a sail, so that nobody's part is told nowhere.
 */
export function othersOrdersPages(book: Book): Found<readonly PageBody[]> {
  const parts = helpedSails(book).map(sail => ({ sail, ...orderLinesOf(sail, book) }))
  const blocks = parts.flatMap(({ sail, lines }) => sailBlocks(sail, lines, book))
  const pages: SailBlock[][] = []
  let left = 0
  for (const block of blocks) {
    if (block.height > left) {
      left = live.textBottom - (pages.length === 0 ? tops.first : tops.later)
      pages.push([])
    }
    pages.at(-1)?.push(block)
    left -= block.height
  }
  return {
    value: pages.map((some, index) => othersPage(some, index, book)),
    findings: parts.flatMap(({ sail, isCut }) => (isCut ? [tooMany(sail)] : [])),
  }
}

const tooMany = (sail: Sail): Finding => ({
  rule: 'sheet/order-too-long',
  severity: 'warning',
  at: sail.span,
  message: `One phase of the ${lowered(sail.label, sail)} is longer than a page of another station's handbook: its end is cut.`,
  remedy: 'Say it shorter, or make two phases of one.',
  related: [],
})

const tops = { key: 40.6, first: 48, later: 28.5 } as const
const columns = { kind: 0, phase: 11.5, order: 16.5, does: 63 } as const
const heads = { baseline: 4.4, rule: 5.3 } as const
const row = { first: 4.1, foot: 1.5 } as const
const afterSail = 2.4

interface SailBlock {
  readonly height: number
  readonly draw: (y: number) => readonly Mark[]
}

interface OrderLine {
  readonly kind: string
  readonly phase: OrderPhase
  readonly order: readonly SetLine[]
  readonly does: readonly SetLine[]
  readonly height: number
  readonly isCut: boolean
}

/** A sail's lines together; those that no page holds together are parted, under a head each. */
function sailBlocks(sail: Sail, lines: readonly OrderLine[], book: Book): readonly SailBlock[] {
  const parts: OrderLine[][] = []
  let left = 0
  for (const line of lines) {
    if (line.height > left) {
      left = live.textBottom - tops.first - heads.rule - afterSail
      parts.push([])
    }
    parts.at(-1)?.push(line)
    left -= line.height
  }
  return parts.map(part => sailBlock(sail, part, book))
}

function sailBlock(sail: Sail, lines: readonly OrderLine[], book: Book): SailBlock {
  const height = heads.rule + lines.reduce((total, line) => total + line.height, 0) + afterSail
  const draw = (y: number): readonly Mark[] => {
    let top = y + heads.rule
    const rows = lines.flatMap(line => {
      const marks = lineMarks(line, top, book)
      top += line.height
      return marks
    })
    return [...sailHead(sail, y, book), ...rows]
  }
  return { height, draw }
}

// As many lines as a page holds under its heads.
const mostLines = 30

function orderLinesOf(
  sail: Sail,
  book: Book,
): { readonly lines: readonly OrderLine[]; readonly isCut: boolean } {
  const lines = ordersOf(sail, book).flatMap(order => orderLines(order, book))
  return { lines, isCut: lines.some(line => line.isCut) }
}

function orderLines(order: Order, book: Book): readonly OrderLine[] {
  const { ruler } = book.setting
  const cut = (lines: readonly SetLine[], measure: number) => atMost(mostLines, lines, measure, ruler)
  const own = order.phases.filter(phase => rowsOf(phase).some(one => isOwn(one, book)))
  return own.map((phase, index) => {
    const spoken = flow(
      [words(`${quoted(phase.order)} `, orderType)],
      columns.does - columns.order - 2,
      ruler,
    )
    const entries = entriesOf(
      rowsOf(phase).filter(one => isOwn(one, book)),
      order.sail,
      book,
    )
    const does = flow(
      entries.flatMap(entry => doesPieces(entry, book)),
      live.width - columns.does,
      ruler,
    )
    const count = Math.min(mostLines, Math.max(1, spoken.length, does.length))
    const height = row.first + (count - 1) * leading.working + row.foot
    return {
      kind: index === 0 ? order.kind : '',
      phase,
      order: cut(spoken, columns.does - columns.order - 2),
      does: cut(does, live.width - columns.does),
      height,
      isCut: Math.max(spoken.length, does.length) > mostLines,
    }
  })
}

const orderType = { ...type.order, size: 10.5 }

// The mark, the address and the name keep together as far as they touch; a line breaks between two entries.
function doesPieces({ act, address, name, hands }: Entry, book: Book): readonly Piece[] {
  const { ruler } = book.setting
  const told =
    act === 'haul' && hands !== undefined ? `${name}, ${hands} ${hands === 1 ? 'hand' : 'hands'}` : name
  return [
    act === 'stand by' ? words('stand by ', type.working) : markPiece(act),
    ...(address ? [addressPiece(address, type.workingAddress, ruler), gap(1.3)] : []),
    words(`${told.replaceAll(' ', '\u00a0')}  `, type.working),
  ]
}

const markPiece = (act: Exclude<OrderRow['act'], 'stand by'>): DrawnPiece => ({
  kind: 'drawn',
  width: 4,
  marks: at => [
    tagged('Span', actionMark(act, { x: at.x + 1.4, y: at.y - 1.22 }, 1.3), { actual: `${actWord[act]}: ` }),
  ],
})

function sailHead(sail: Sail, y: number, { setting: { ruler } }: Book): readonly Mark[] {
  const face = type.sectionInTable
  const fit = fitted(sail.label, [face, { ...face, size: 9 }], live.width, ruler)
  const name = lettered(ruler, { x: 0, y: y + heads.baseline }, fit.words, fit.type, black)
  const cell = columnHead([name], { columns: 3, ...(fit.isCut ? { actual: sail.label } : {}) })
  return [tagged('TR', [cell]), artifact([level(0, live.width, y + heads.rule, rule.section)])]
}

function lineMarks(line: OrderLine, y: number, { setting: { ruler } }: Book): readonly Mark[] {
  const base = y + row.first
  const kind =
    line.kind === ''
      ? []
      : [lettered(ruler, { x: columns.kind, y: base }, `${line.kind} `, type.workingAddress, black)]
  const phase = lettered(
    ruler,
    { x: columns.phase, y: base },
    `${line.phase.number} `,
    type.workingAddress,
    black,
  )
  const set = (lines: readonly SetLine[], x: number) =>
    tagged('TD', setLines(lines, { x, y: base }, leading.working, ruler).marks)
  return [
    tagged('TR', [rowHead([...kind, phase]), set(line.order, columns.order), set(line.does, columns.does)]),
    artifact([level(0, live.width, y + line.height, rule.tableRow)]),
  ]
}

function othersPage(blocks: readonly SailBlock[], index: number, book: Book): PageBody {
  const { ruler } = book.setting
  const isFirst = index === 0
  const heading = isFirst
    ? [
        ...pageTitle(title, ruler).marks,
        ...subtitle(lead, 33.6, ruler).marks,
        ...tackKey(tops.key, ruler).marks,
      ]
    : continuedTitle(title, ruler).marks
  const marks: Mark[] = []
  let y: number = isFirst ? tops.first : tops.later
  for (const block of blocks) {
    marks.push(...block.draw(y))
    y += block.height
  }
  return {
    key: isFirst ? 'others orders' : `others orders ${index + 1}`,
    title,
    section: title,
    description: `${title}: for each sail and phase, the order given and the lines this station works in it.`,
    marks: [...heading, tagged('Table', marks, { key: 'others orders' })],
    bookmarks: isFirst ? [{ level: 1, title }] : [],
  }
}
