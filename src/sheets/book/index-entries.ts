import { flow, type Piece, setLines, words } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { linkTo, rowHead, tagged } from '../tagged.ts'
import type { Ruler, Typeface } from '../typeface.ts'
import { addressPiece, addressWidth } from './address.ts'
import type { Book } from './book.ts'
import type { Entry } from './index-columns.ts'
import { type NameRow, nameRows, type PinRow, pinRows } from './index-rows.ts'
import { black, leading, type } from './type.ts'

// Room for a page number of two figures, or of three at a pinch, and before an address.
const pageRoom = 5.6
const before = 1.2

/** The rows of the index by name: name, pin, page. */
export function nameEntries(book: Book): readonly Entry[] {
  return nameRows(book).map(row => nameEntry(row, book.setting.ruler))
}

/** The rows of the index by pin: pin, name. */
export function pinEntries(book: Book): readonly Entry[] {
  const { ruler } = book.setting
  const rows = pinRows(book)
  const widest = Math.max(0, ...rows.map(row => addressWidth(row.address, type.indexStrong, ruler)))
  return rows.map(row => pinEntry(row, Math.min(widest + 1.8, 24), ruler))
}

function nameEntry(row: NameRow, ruler: Ruler): Entry {
  const face = row.isOthers ? type.indexItalic : type.index
  const addressRoom = Math.max(
    0,
    ...row.addresses.map(address => addressWidth(address, type.indexStrong, ruler)),
  )
  const named = (width: number) =>
    flow([words(row.name, face)], width - pageRoom - addressRoom - before, ruler)
  return {
    group: row.group,
    lines: width => Math.max(1, named(width).length, row.addresses.length),
    draw: (x, y, width) => {
      const right = x + width - pageRoom
      const addresses = row.addresses.flatMap((address, index) =>
        addressPiece(address, type.indexStrong, ruler).marks({
          x: right - addressWidth(address, type.indexStrong, ruler),
          y: y + index * leading.index,
        }),
      )
      return tagged('TR', [
        rowHead(setLines(named(width), { x, y }, leading.index, ruler).marks),
        tagged('TD', addresses),
        tagged('TD', pageNumber(row, x + width, y, ruler)),
      ])
    },
  }
}

function pageNumber({ page, name }: NameRow, right: number, y: number, ruler: Ruler): readonly Mark[] {
  if (page === undefined) return []
  const mark = lettered(ruler, { x: right, y }, String(page), type.index, black, { anchor: 'end' })
  return [linkTo(page, `${name}, page ${page}`, [mark])]
}

function pinEntry(row: PinRow, indent: number, ruler: Ruler): Entry {
  const taken = addressWidth(row.address, type.indexStrong, ruler)
  const at = Math.max(indent, taken + 1)
  const named = (width: number) => flow(pinWords(row), width - at, ruler)
  return {
    group: row.group,
    lines: width => Math.max(1, named(width).length),
    draw: (x, y, width) =>
      tagged('TR', [
        rowHead(addressPiece(row.address, type.indexStrong, ruler).marks({ x, y })),
        tagged('TD', setLines(named(width), { x: x + at, y }, leading.index, ruler).marks),
      ]),
  }
}

function pinWords({ names, alsoFree }: PinRow): readonly Piece[] {
  const face = (isOthers: boolean): Typeface => (isOthers ? type.indexItalic : type.index)
  if (names.length === 0) {
    const more = alsoFree.length === 0 ? '' : `, and ${alsoFree.join(', ')}`
    return [words(`free${more}`, type.indexItalic)]
  }
  return names.map(({ name, isOthers }, index) => words(`${index === 0 ? '' : '; '}${name}`, face(isOthers)))
}
