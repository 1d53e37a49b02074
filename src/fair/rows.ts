import { type Piece, type TextLine, textLines } from '../syntax/index.ts'
import type { Source } from '../text/index.ts'

/** Columns that each level is set in. */
export const perLevel = 2

/** One line of a text, blank or not, by the columns in which its words stand. Columns count from 0. */
export interface Row {
  /** How many levels it is set in; undefined where it is blank or a remark alone. */
  readonly level: number | undefined
  /** A comma is part of the word before it. */
  readonly cells: readonly Cell[]
  readonly remark: Cell | undefined
}

export interface Cell {
  /** As it is to be written: one blank between the words of a number; prose and quoted words as they are. */
  readonly text: string
  readonly at: number
  readonly end: number
}

/** Where the word of a cell ends, its comma left off. */
export const edgeOf = ({ text, end }: Cell): number => (text.endsWith(',') ? end - 1 : end)

/** The lines of a text that can be read soundly. */
export function rowsOf(source: Source): readonly Row[] {
  const said = textLines(source)
  let next = 0
  return linesIn(source.text).map(line => {
    const first = said[next]?.pieces[0]
    if (!first || first.start >= line.end) return { level: undefined, cells: [], remark: remarkIn(line, 0) }
    const textLine = said[next++] as TextLine
    const { cells, read } = cellsIn(line, textLine.pieces)
    return { level: textLine.level, cells, remark: remarkIn(line, read) }
  })
}

interface Line {
  readonly text: string
  /** Offsets in the whole text; the line's own end is not in it. */
  readonly start: number
  readonly end: number
}

function linesIn(text: string): readonly Line[] {
  let end = 0
  return text.split(/(\r\n|\r|\n)/).flatMap((words, index) => {
    const line = { text: words, start: end, end: end + words.length }
    end = line.end
    // Every second piece is a line end.
    return index % 2 === 0 ? [line] : []
  })
}

/** The cells of a line, and how much of the line they take. */
function cellsIn(line: Line, pieces: readonly Piece[]): { readonly cells: Cell[]; readonly read: number } {
  const cells: Cell[] = []
  let read = 0
  let column = 0
  for (const piece of pieces) {
    const [start, end] = [piece.start - line.start, piece.end - line.start]
    const at = columnAfter(column, line.text.slice(read, start))
    column = columnAfter(at, line.text.slice(start, end))
    read = end
    const before = piece.kind === 'comma' ? cells.pop() : undefined
    if (before) cells.push({ ...before, text: `${before.text},`, end: column })
    else cells.push({ text: textOf(line, piece), at, end: column })
  }
  return { cells, read }
}

function textOf(line: Line, { kind, start, end, proseAt }: Piece): string {
  const text = line.text.slice(start - line.start, end - line.start)
  if (kind === 'number') return oneBlank(text)
  if (kind !== 'prose' || proseAt === undefined) return text
  return `${oneBlank(text.slice(0, proseAt - start))}${text.slice(proseAt - start)}`
}

const oneBlank = (words: string) => words.replace(/[ \t]+/g, ' ')

/** The remark behind what is read of a line. */
function remarkIn({ text }: Line, read: number): Cell | undefined {
  const rest = text.slice(read)
  const blanks = rest.length - rest.trimStart().length
  const words = rest.trim()
  if (words === '') return undefined
  const at = columnAfter(0, text.slice(0, read + blanks))
  return { text: words, at, end: at + widthOf(words) }
}

/** Where one stands after writing `text` from a column: a tab goes to the next fourth. */
function columnAfter(column: number, text: string): number {
  let at = column
  for (const mark of text) at = mark === '\t' ? at - (at % 4) + 4 : at + 1
  return at
}

/** How many columns words take. */
const widthOf = (words: string): number => columnAfter(0, words)

/** A cell in another column. */
export const movedTo = ({ text }: Cell, at: number): Cell => ({ text, at, end: at + widthOf(text) })
