import { black } from './ink.ts'
import { lettered } from './lettered.ts'
import { cutTo } from './narrow.ts'
import type { Mark, Point } from './sheet.ts'
import type { Ruler, Typeface } from './typeface.ts'

/** A stretch of running text: words, which break at spaces, or something drawn among them, which never breaks. */
export type Piece =
  | { readonly kind: 'words'; readonly words: string; readonly type: Typeface; readonly ink?: string }
  | DrawnPiece

export interface DrawnPiece {
  readonly kind: 'drawn'
  readonly width: number
  /** Its marks, with the left end of its baseline at this point. */
  readonly marks: (at: Point) => readonly Mark[]
}

/** One line of running text, its pieces without breaks. */
export interface SetLine {
  readonly pieces: readonly Piece[]
  readonly width: number
}

export const words = (text: string, type: Typeface, ink?: string): Piece =>
  ink === undefined ? { kind: 'words', words: text, type } : { kind: 'words', words: text, type, ink }

/** Empty room among pieces. It does not break. */
export const gap = (width: number): Piece => ({ kind: 'drawn', width, marks: () => [] })

/** Plain words in lines no longer than the measure. A word that is longer is broken where it must be. */
export function wrap(text: string, type: Typeface, measure: number, ruler: Ruler): readonly string[] {
  return flow([words(text, type)], measure, ruler).map(line =>
    line.pieces.map(piece => (piece.kind === 'words' ? piece.words : '')).join(''),
  )
}

/** Pieces in lines no longer than the measure, ragged, broken at spaces and never hyphenated. */
export function flow(pieces: readonly Piece[], measure: number, ruler: Ruler): readonly SetLine[] {
  const only = closed(joined(pieces.filter(isSomething).map(collapsed)), ruler)
  if (only.pieces.length > 0 && only.width < measure - roomToSpare) return [only]
  const lines: SetLine[] = []
  let line: readonly Piece[] = []
  let filled = 0
  for (const unit of units(pieces).flatMap(whole => broken(whole, measure, ruler))) {
    const isFull = line.length > 0 && !fits(line, filled, unit, measure, ruler)
    if (isFull) lines.push(closed(line, ruler))
    line = joined(isFull ? unit : [...line, ...unit])
    filled = (isFull ? 0 : filled) + runWidth(unit, ruler)
  }
  if (line.length > 0) lines.push(closed(line, ruler))
  return lines
}

const isSomething = (piece: Piece): boolean => piece.kind === 'drawn' || piece.words !== ''

// Words that leave so much of a line free need not be tried one by one.
const roomToSpare = 2

// The sum of the words' widths leaves out only the kerning between them, so the whole line is measured only
// where it comes close to full.
function fits(line: readonly Piece[], filled: number, unit: Unit, measure: number, ruler: Ruler): boolean {
  const sum = filled + lineWidth(unit, ruler)
  if (Math.abs(sum - measure) > 0.4) return sum < measure
  return lineWidth(joined([...line, ...unit]), ruler) <= measure
}

/** The marks of one line, from the left end of its baseline. Words of one type stand in one mark. */
export function setLine(line: SetLine, at: Point, ruler: Ruler): readonly Mark[] {
  const marks: Mark[] = []
  let x = at.x
  for (const piece of line.pieces) {
    const here = { x, y: at.y }
    if (piece.kind === 'drawn') marks.push(...piece.marks(here))
    else if (piece.words.trim() !== '')
      marks.push(lettered(ruler, here, piece.words, piece.type, piece.ink ?? black))
    x += pieceWidth(piece, ruler)
  }
  return marks
}

export interface Block {
  readonly marks: readonly Mark[]
  /** The lowest baseline; the first one where there are no lines. */
  readonly bottom: number
  readonly lines: number
}

/** Lines under each other. Every line but the last ends in a real space, so that a reader of tags hears words. */
export function setLines(lines: readonly SetLine[], at: Point, leading: number, ruler: Ruler): Block {
  const marks = lines.flatMap((line, index) => {
    const spaced = index < lines.length - 1 ? endingInSpace(line) : line
    return setLine(spaced, { x: at.x, y: at.y + index * leading }, ruler)
  })
  return { marks, bottom: at.y + Math.max(0, lines.length - 1) * leading, lines: lines.length }
}

/** The first of the lines, with an ellipsis where more would follow. */
export function atMost(
  most: number,
  lines: readonly SetLine[],
  measure: number,
  ruler: Ruler,
): readonly SetLine[] {
  const kept = lines.slice(0, most)
  const line = kept.at(-1)
  const last = line?.pieces.at(-1)
  if (kept.length === lines.length || !line || last?.kind !== 'words') return kept
  const before = line.pieces.slice(0, -1)
  const cut = cutTo(measure - runWidth(before, ruler), `${last.words.trimEnd()} …`, last.type, ruler)
  return [...kept.slice(0, -1), closed([...before, { ...last, words: cut }], ruler)]
}

export interface Fitted {
  readonly words: string
  readonly type: Typeface
  /** True where even the last type was too wide, and the words end in an ellipsis. */
  readonly isCut: boolean
}

/** One line of words in the first of the types in which they fit the measure; cut short only in the last. */
export function fitted(text: string, types: readonly Typeface[], measure: number, ruler: Ruler): Fitted {
  const fitting = types.find(type => ruler(text, type) <= measure)
  if (fitting) return { words: text, type: fitting, isCut: false }
  const type = types[types.length - 1] as Typeface
  return { words: cutTo(measure, text, type, ruler), type, isCut: true }
}

type Unit = readonly Piece[]

// A unit is what stands between two spaces: words and drawn pieces that touch. The space stays at its end.
function units(pieces: readonly Piece[]): readonly Unit[] {
  const found: Unit[] = []
  let unit: Piece[] = []
  const close = () => {
    if (unit.length > 0) found.push(unit)
    unit = []
  }
  for (const piece of pieces) {
    if (piece.kind === 'drawn') unit.push(piece)
    else
      for (const part of piece.words.match(/[^ \t\r\n]+[ \t\r\n]*|[ \t\r\n]+/g) ?? []) {
        const shown = collapsed({ ...piece, words: part })
        unit.push(shown)
        if (shown.words.endsWith(' ')) close()
      }
  }
  close()
  return found
}

function collapsed<P extends Piece>(piece: P): P {
  return piece.kind === 'drawn' ? piece : { ...piece, words: piece.words.replace(/[ \t\r\n]+/g, ' ') }
}

// Only a unit that fills more than a line by itself is broken inside, letter by letter.
function broken(unit: Unit, measure: number, ruler: Ruler): readonly Unit[] {
  if (lineWidth(unit, ruler) <= measure) return [unit]
  const parts: Unit[] = []
  let part: readonly Piece[] = []
  for (const atom of unit.flatMap(letters)) {
    const longer = joined([...part, atom])
    const full = lineWidth(longer, ruler) > measure && part.length > 0
    if (full) parts.push(part)
    part = full ? [atom] : longer
  }
  if (part.length > 0) parts.push(part)
  return parts
}

const letters = (piece: Piece): readonly Piece[] =>
  piece.kind === 'drawn' ? [piece] : [...piece.words].map(letter => ({ ...piece, words: letter }))

function joined(pieces: readonly Piece[]): readonly Piece[] {
  const result: Piece[] = []
  for (const piece of pieces) {
    const last = result[result.length - 1]
    if (
      piece.kind === 'words' &&
      last?.kind === 'words' &&
      last.type === piece.type &&
      last.ink === piece.ink
    )
      result[result.length - 1] = { ...last, words: last.words + piece.words }
    else result.push(piece)
  }
  return result
}

const pieceWidth = (piece: Piece, ruler: Ruler): number =>
  piece.kind === 'drawn' ? piece.width : ruler(piece.words, piece.type)

const runWidth = (pieces: readonly Piece[], ruler: Ruler): number =>
  pieces.reduce((total, piece) => total + pieceWidth(piece, ruler), 0)

// The space at a line's end takes no room.
function lineWidth(pieces: readonly Piece[], ruler: Ruler): number {
  return runWidth(trimmed(pieces), ruler)
}

function trimmed(pieces: readonly Piece[]): readonly Piece[] {
  const last = pieces[pieces.length - 1]
  if (last?.kind !== 'words' || !/\s$/.test(last.words)) return pieces
  return [...pieces.slice(0, -1), { ...last, words: last.words.trimEnd() }]
}

const closed = (pieces: readonly Piece[], ruler: Ruler): SetLine => ({
  pieces: trimmed(pieces),
  width: lineWidth(pieces, ruler),
})

function endingInSpace(line: SetLine): SetLine {
  const last = line.pieces[line.pieces.length - 1]
  if (last?.kind !== 'words') return line
  return { ...line, pieces: [...line.pieces.slice(0, -1), { ...last, words: `${last.words} ` }] }
}
