import type { IToken } from 'chevrotain'
import type { Source } from '../text/index.ts'
import { lex } from './lexer.ts'
import { setMargins } from './margin.ts'
import type { SaidWords } from './matchers.ts'
import { endOf } from './said.ts'
import { Comma, Count, GoesOn, LineEnd, Measure, prose, SetIn, SetOut } from './tokens.ts'
import { tellWords } from './wording.ts'

/** A line of a text that says something: how many levels it is set in, and the words and marks on it. */
export interface TextLine {
  readonly level: number
  readonly pieces: readonly Piece[]
}

/** What the language reads as one word or mark, by its place in the text. */
export interface Piece {
  readonly kind: 'word' | 'comma' | 'number' | 'prose'
  readonly start: number
  readonly end: number
  /** Of prose: where it begins, behind the words that open it. */
  readonly proseAt: number | undefined
}

/** The lines of a text that is sound, with the margins as they are read; blank lines and remarks are no part of them. */
export function textLines(source: Source): readonly TextLine[] {
  const lines: TextLine[] = []
  let level = 0
  let pieces: Piece[] = []
  for (const token of setMargins(tellWords(lex(source.text), source, []), source, [])) {
    if (token.tokenType === SetIn) level++
    else if (token.tokenType === SetOut) level--
    else if (token.tokenType === LineEnd) {
      lines.push({ level, pieces })
      pieces = []
    } else if (token.tokenType !== GoesOn) pieces.push(pieceOf(token))
  }
  return lines
}

const proseKinds = new Set(Object.values(prose))

function pieceOf(token: IToken): Piece {
  const { tokenType, startOffset: start } = token
  const place = { start, end: endOf(token), proseAt: undefined }
  if (tokenType === Comma) return { ...place, kind: 'comma' }
  if (tokenType === Measure || tokenType === Count) return { ...place, kind: 'number' }
  if (proseKinds.has(tokenType))
    return { ...place, kind: 'prose', proseAt: (token.payload as SaidWords).start }
  return { ...place, kind: 'word' }
}
