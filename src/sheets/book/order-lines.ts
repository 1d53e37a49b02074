import type { OrderRow } from '../../evolve/index.ts'
import type { Act } from '../../rig/index.ts'
import { atMost, type Block, flow, type Piece, setLines, words } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark, Point } from '../sheet.ts'
import { artifact, tagged } from '../tagged.ts'
import { actionMark, actWord } from './action-mark.ts'
import { addressMarks, addressWidth, addressWords } from './address.ts'
import { type Entry, entriesJoined, entriesOf } from './order-entry.ts'
import type { OrderSetting } from './order-layout.ts'
import { black, type } from './type.ts'

/** Where one list of lines stands across the page. */
export interface ListColumn {
  /** The middle of the action's mark; undefined where a word-block stands for all of them. */
  readonly mark: number | undefined
  readonly address: number
  readonly name: number
  readonly right: number
  readonly showsHands: boolean
}

/** The entries of rows, joined or not as the page has room. */
export function entriesSet(
  rows: readonly OrderRow[],
  { book, sail, isJoined }: OrderSetting,
): readonly Entry[] {
  return isJoined ? entriesJoined(rows, sail, book) : entriesOf(rows, sail, book)
}

/** A list of lines, a row or more each, from the first baseline `y`; a list of the tags for every action in turn. */
export function lineList(entries: readonly Entry[], column: ListColumn, y: number, set: OrderSetting): Block {
  const lists: Mark[] = []
  let items: Mark[] = []
  let baseline = y
  let lines = 0
  for (const [index, entry] of entries.entries()) {
    const isFirst = index === 0 || entries[index - 1]?.act !== entry.act
    if (isFirst && items.length > 0) lists.push(tagged('L', items))
    if (isFirst) items = []
    const item = lineItem(entry, column, baseline, set, isFirst)
    items.push(tagged('LI', item.marks))
    baseline += item.lines * set.pace.leading
    lines += item.lines
  }
  if (items.length > 0) lists.push(tagged('L', items))
  return { marks: lists, bottom: y + Math.max(0, lines - 1) * set.pace.leading, lines }
}

/** One line of a list: its mark, address, name and hands. */
export function lineItem(
  entry: Entry,
  column: ListColumn,
  y: number,
  { book, pace, mostLines }: OrderSetting,
  isFirst: boolean,
): Block {
  const { ruler } = book.setting
  const hands =
    column.showsHands && entry.hands !== undefined
      ? handsMarks(entry.hands, { x: column.right, y }, book)
      : []
  const place = placed(entry, { ...column, right: column.right - handsRoom(hands) }, book, pace.leading)
  const room = place.right - place.name
  const name = setLines(
    atMost(mostLines, flow(namePieces(entry), room, ruler), room, ruler),
    { x: place.name, y: y + place.drop },
    pace.leading,
    ruler,
  )
  const marks = [
    ...(column.mark === undefined ? [] : [markOf(entry.act, { x: column.mark, y }, isFirst)]),
    ...addressOrNone(entry, { x: column.address, y }, book),
    ...name.marks,
    ...hands,
  ]
  const lines = name.lines + (place.drop > 0 ? 1 : 0)
  return { marks, bottom: y + (lines - 1) * pace.leading, lines: Math.max(1, lines) }
}

/** How wide an entry is with its name right after its address. */
export function entryWidth(entry: Entry, { book }: OrderSetting): number {
  return addressRoom(entry, book) + nameWidth(entry, book)
}

const nameAfter = 1.5

function addressRoom({ address }: Entry, { setting }: OrderSetting['book']): number {
  const width = address
    ? addressWidth(address, type.workingAddress, setting.ruler)
    : setting.ruler('no pin', type.workingOthers)
  return width + nameAfter
}

// A name stands at the column's tab; a wide address pushes it on, a long name begins sooner, and an address that
// leaves no room for words sends the name to the next line.
function placed(entry: Entry, column: ListColumn, book: OrderSetting['book'], leading: number) {
  const { right } = column
  const after = column.address + addressRoom(entry, book)
  if (right - after < 13) return { name: column.address, right, drop: leading }
  const isLong = nameWidth(entry, book) > right - column.name
  return { name: isLong ? after : Math.max(column.name, after), right, drop: 0 }
}

function handsRoom(hands: readonly Mark[]): number {
  const [mark] = hands
  const text = mark?.kind === 'group' ? mark.marks[0] : undefined
  return text?.kind === 'text' ? text.width + 1.6 : 0
}

const nameWidth = (entry: Entry, { setting }: OrderSetting['book']): number =>
  namePieces(entry).reduce(
    (total, piece) => total + (piece.kind === 'words' ? setting.ruler(piece.words.trimEnd(), piece.type) : 0),
    0,
  )

function addressOrNone({ address }: Entry, at: Point, { setting }: OrderSetting['book']): readonly Mark[] {
  if (!address) return [lettered(setting.ruler, at, 'no pin ', type.workingOthers, black)]
  const marks = addressMarks(address, at, type.workingAddress, setting.ruler)
  return [tagged('Span', marks, { actual: `${addressWords(address)} ` })]
}

function namePieces({ name, station }: Entry): readonly Piece[] {
  if (station === undefined) return [words(`${name} `, type.working)]
  return [words(`${name} ${station} `, type.workingOthers)]
}

function handsMarks(hands: number, at: Point, { setting }: OrderSetting['book']): readonly Mark[] {
  const mark = lettered(setting.ruler, at, String(hands), type.workingAddress, black, { anchor: 'end' })
  return [tagged('Span', [mark], { actual: `${hands} ${hands === 1 ? 'hand' : 'hands'}` })]
}

// Heard once at the head of its list; the marks of the lines after it only repeat it to the eye.
function markOf(act: Act, { x, y }: Point, isFirst: boolean): Mark {
  if (act === 'stand by') return artifact([])
  const marks = actionMark(act, { x, y: y - 1.22 }, act === 'hold' || act === 'tend' ? 1.2 : 1.32)
  return isFirst ? tagged('Lbl', [tagged('Span', marks, { actual: `${actWord[act]}: ` })]) : artifact(marks)
}
