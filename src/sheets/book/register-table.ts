import { fitted, flow, setLines, words } from '../flow.ts'
import { functionMark } from '../function-mark.ts'
import { lettered } from '../lettered.ts'
import type { Mark, Point } from '../sheet.ts'
import { artifact, columnHead, rowHead, tagged } from '../tagged.ts'
import type { Typeface } from '../typeface.ts'
import { actionMark } from './action-mark.ts'
import { addressMarks, addressWords } from './address.ts'
import type { Book } from './book.ts'
import { live } from './page.ts'
import { level } from './page-parts.ts'
import { type RegisterRow, ropeUnit } from './register-rows.ts'
import { black, leading, rule, type } from './type.ts'

/** Where the columns stand; the last two are right-aligned at these places. */
const columns = { where: 0, line: 20, mark: 48.4, hauling: 51.2, ease: 79, hands: 110, rope: 118 } as const
const gutter = 1.3
const row = { first: 3.75, foot: 1.62 } as const

/** From the top of a section's heading to the rule under it, in millimetres. */
export const sectionHeight = 6.6

/** A row that knows how high it is before it is placed. */
export interface Measured {
  readonly row: RegisterRow
  readonly height: number
  /** `y` is its upper edge. */
  readonly draw: (y: number) => readonly Mark[]
}

/** A row of the register, as high as its fullest cell. */
export function measuredRow(entry: RegisterRow, book: Book): Measured {
  const { ruler } = book.setting
  const own = entry.isOthers ? type.registerItalic : type.registerStrong
  const cell = (text: string, face: Typeface, from: number, to: number) =>
    flow([words(`${text} `, face)], to - gutter - from, ruler)
  const nameRoom = columns.mark - 1 - gutter - columns.line
  const isTooWide = entry.name.split(' ').some(word => ruler(word, own) > nameRoom)
  const name = cell((isTooWide && entry.inShort) || entry.name, own, columns.line, columns.mark - 1)
  const hauling = cell(entry.hauling, type.register, columns.hauling, columns.ease)
  const ease = cell(entry.ease, type.register, columns.ease, columns.hands - 3)
  const remark =
    entry.remark === '' ? [] : cell(entry.remark, type.register, columns.line, live.width + gutter)
  const lines = Math.max(1, name.length, hauling.length, ease.length)
  const under = lines * leading.register
  const height = row.first + (lines - 1 + remark.length) * leading.register + row.foot
  const draw = (y: number): readonly Mark[] => {
    const base = y + row.first
    const at = (x: number): Point => ({ x, y: base })
    const set = (cellLines: typeof name, x: number) =>
      setLines(cellLines, at(x), leading.register, ruler).marks
    const cells = [
      rowHead(addressCell(entry, at(columns.where), book)),
      tagged('TD', [
        ...set(name, columns.line),
        ...setLines(remark, { x: columns.line, y: base + under }, leading.register, ruler).marks,
      ]),
      tagged('TD', [...deedMark(entry, base), ...set(hauling, columns.hauling)]),
      tagged('TD', set(ease, columns.ease)),
      tagged('TD', [figures(entry.hands, at(columns.hands), type.registerStrong, book)]),
      tagged('TD', [figures(entry.rope, at(columns.rope), type.register, book)]),
    ]
    return [tagged('TR', cells), artifact([level(0, live.width, y + height, rule.tableRow)])]
  }
  return { row: entry, height, draw }
}

function addressCell({ address }: RegisterRow, at: Point, { setting: { ruler } }: Book): readonly Mark[] {
  if (!address) return [lettered(ruler, at, 'no pin', type.registerItalic, black)]
  const marks = addressMarks(address, at, type.registerStrong, ruler)
  return [tagged('Span', marks, { actual: addressWords(address) })]
}

function deedMark({ deed }: RegisterRow, base: number): readonly Mark[] {
  if (!deed) return []
  return [artifact(functionMark(deed, { x: columns.mark, y: base - 1.12 }, 1.05, black))]
}

const figures = (text: string, at: Point, face: Typeface, { setting: { ruler } }: Book): Mark =>
  lettered(ruler, at, text, { ...face, tabular: true }, black, { anchor: 'end' })

/** A sail's name over its rows: a heading of the table across all columns, with a note at the right. */
export function sectionMarks(
  name: string,
  note: string,
  y: number,
  { setting: { ruler } }: Book,
): readonly Mark[] {
  const base = y + 4.95
  const bottom = y + sectionHeight
  const aside = lettered(ruler, { x: live.width, y: base }, note, type.registerItalic, black, {
    anchor: 'end',
  })
  const room = live.width - aside.width - 4
  const fit = fitted(name, [type.sectionInTable, { ...type.sectionInTable, size: 9 }], room, ruler)
  const heading = lettered(ruler, { x: 0, y: base }, `${fit.words} `, fit.type, black)
  return [
    tagged('TR', [columnHead([heading, aside], { columns: 6, ...(fit.isCut ? { actual: name } : {}) })]),
    artifact([level(0, live.width, bottom, rule.section)]),
  ]
}

/** The table's head between its two rules; on later pages only for the eye. */
export function tableHead(
  y: number,
  isFirst: boolean,
  book: Book,
): { inside: readonly Mark[]; outside: readonly Mark[] } {
  const { ruler } = book.setting
  const base = y + 3.35
  const word = (text: string, x: number, anchor: 'start' | 'end' = 'start') =>
    lettered(ruler, { x, y: base }, text, type.tableHead, black, { anchor })
  const cells = [
    columnHead([word('Where', columns.where)]),
    columnHead([word('Line', columns.line)]),
    columnHead([
      artifact(actionMark('haul', { x: columns.mark, y: base - 1.03 }, 1.2)),
      word('Hauling it', columns.hauling),
    ]),
    columnHead([
      artifact(actionMark('ease', { x: columns.ease + 0.9, y: base - 1.03 }, 1.1)),
      word('Ease with it', columns.ease + 2.9),
    ]),
    columnHead([word('Hands', columns.hands, 'end')]),
    columnHead([word(ropeUnit(book), columns.rope, 'end')]),
  ]
  const rules = [level(0, live.width, y, rule.table), level(0, live.width, y + 4.9, rule.furniture)]
  const head = tagged('THead', [tagged('TR', cells)], { key: 'line register head' })
  return isFirst
    ? { inside: [head], outside: rules }
    : { inside: [], outside: [artifact([...rules, ...cells.flatMap(cell => cell.marks)])] }
}
