import type { IToken, TokenType } from 'chevrotain'
import type { Finding } from '../findings/index.ts'
import type { FigureFault, FigureRead } from '../measure/index.ts'
import type { Source } from '../text/index.ts'
import type { SaidWords } from './matchers.ts'
import { endOf, error, tokenSpan } from './said.ts'
import {
  Count,
  Figure,
  LineStart,
  Measure,
  OddMark,
  Quoted,
  QuotedFirst,
  RuleName,
  said,
  ToOrder,
  Word,
} from './tokens.ts'
import { placedWords, smallWords } from './words.ts'

/**
 * Tells small words from words, and measures from counts; puts odd marks aside with a finding each, so that the parser
 * never meets one. Works on the tokens themselves: nobody else has seen them yet.
 */
export function tellWords(tokens: readonly IToken[], source: Source, findings: Finding[]): IToken[] {
  const kept: IToken[] = []
  let lineFirst: IToken | undefined
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i] as IToken
    if (token.tokenType === OddMark) {
      i = lastOfMarks(tokens, i)
      findings.push(oddMark(source, token, tokens[i] as IToken))
      continue
    }
    const letter = tokens[i + 1]
    if (letter && isPinBetween(token, letter, source)) {
      kept.push(withLetter(token, letter))
      lineFirst ??= token
      i++
      continue
    }
    kept.push(token)
    if (token.tokenType === LineStart) {
      lineFirst = undefined
      continue
    }
    const first = lineFirst === undefined
    lineFirst ??= token
    if (token.tokenType === Word) {
      const word = token.image.toLowerCase()
      const next = afterMarks(tokens, i)
      if (tellNumberWord(token, word, next, source, findings)) continue
      const isBraces = word === 'braces' && isToAngle(next, tokens[i + 2])
      retype(token, isBraces ? said.braces : wordKind(word, next, first, lineFirst))
    } else if (token.tokenType === Figure) tellFigure(token, source, findings)
    else if (token.tokenType === Quoted) tellQuoted(token, first, source, findings)
  }
  return kept
}

/** '4a': a whole number and one letter that touch each other, where the letter is no unit. */
const isPinBetween = (token: IToken, letter: IToken, { text }: Source): boolean =>
  token.tokenType === Figure &&
  letter.tokenType === Word &&
  letter.image.length === 1 &&
  touches(token, letter) &&
  /^[1-9][0-9]{0,2}[a-z]$/i.test(text.slice(token.startOffset, endOf(letter)))

/** One token of both: it counts, and is written with its letter. */
function withLetter(token: IToken, letter: IToken): IToken {
  const read = token.payload as FigureRead
  const image = token.image + letter.image
  const whole: IToken = { ...token, image, payload: { ...read, written: image } }
  retype(whole, Count)
  return whole
}

/** Gives a token another kind. */
export function retype(token: IToken, type: TokenType): void {
  token.tokenType = type
  token.tokenTypeIdx = type.tokenTypeIdx as number
}

const kinds: ReadonlyMap<string, TokenType> = new Map(
  [...smallWords, ...placedWords].map(word => [word, said[word]]),
)

/** What parts the names behind 'fits': all else there is a name, also 'fixed' of 'fixed yard'. */
const partsFits: ReadonlyMap<string, TokenType> = new Map(
  (['on', 'or', 'and', 'over', 'without'] as const).map(word => [word, said[word]]),
)

function wordKind(word: string, next: IToken | undefined, first: boolean, lineFirst: IToken): TokenType {
  if (first) {
    if (word === 'gear') return said.gear
    if (word === 'to' && next !== undefined && /^(?:set|douse)$/i.test(next.image)) return ToOrder
  }
  if (word === 'allow' && (first || next?.image.includes('/'))) return said.allow
  if (word === 'reef' && next !== undefined && /^in$/i.test(next.image)) return said.reef
  if ((word === 'pin' || word === 'number') && next?.tokenType === Figure) return said[word]
  if (lineFirst.tokenType === said.fits) return partsFits.get(word) ?? Word
  const kind = kinds.get(word)
  if (kind !== undefined) return kind
  return word.includes('/') ? RuleName : Word
}

/** 'to 35 deg': behind 'braces', where no name is followed by an angle. */
const isToAngle = (to: IToken | undefined, angle: IToken | undefined): boolean =>
  to !== undefined &&
  /^to$/i.test(to.image) &&
  angle?.tokenType === Figure &&
  (angle.payload as FigureRead).dimension === 'angle'

/** 'six pins': told, and read as 6. */
function tellNumberWord(
  token: IToken,
  word: string,
  next: IToken | undefined,
  source: Source,
  findings: Finding[],
): boolean {
  const value = numberWords.get(word)
  if (value === undefined || next === undefined || !counted.has(next.image.toLowerCase())) return false
  const at = tokenSpan(source, token)
  const remedy = `Write "${value} ${next.image}".`
  findings.push({
    ...error('measure/notation', at, `"${token.image}" is not how a number is written here.`, remedy),
    fix: { title: `Write ${value}`, edits: [{ at, text: String(value) }] },
  })
  token.payload = {
    written: String(value),
    value,
    dimension: undefined,
    unit: undefined,
    fault: undefined,
  } satisfies FigureRead
  retype(token, Count)
  return true
}

const numberWords: ReadonlyMap<string, number> = new Map(
  'one two three four five six seven eight nine ten eleven twelve'.split(' ').map((word, i) => [word, i + 1]),
)
const counted: ReadonlySet<string> = new Set(['pin', 'pins', 'hand', 'hands', 'in', 'a'])

function tellFigure(token: IToken, source: Source, findings: Finding[]): void {
  const read = token.payload as FigureRead
  retype(token, read.dimension === undefined ? Count : Measure)
  if (read.fault !== undefined) findings.push(figureFinding(source, token, read.fault))
}

function figureFinding(source: Source, token: IToken, fault: FigureFault): Finding {
  const at = tokenSpan(source, token)
  const written = token.image.length > 24 ? `${token.image.slice(0, 20)}…` : token.image
  switch (fault) {
    case 'too-large':
      return error(
        'measure/out-of-range',
        at,
        `"${written}" is no number for a ship.`,
        'Write it out in figures, with its unit.',
      )
    case 'exponent':
      return error(
        'measure/notation',
        at,
        `"${written}" is not how a number is written here.`,
        'Write it out in figures.',
      )
    case 'doubtful-comma':
      return error(
        'measure/doubtful-comma',
        at,
        `"${written}" can be read in two ways: with a decimal comma, or with a comma between thousands.`,
        'Use a point for decimals, and nothing between thousands.',
      )
    case 'negative':
      return error(
        'measure/negative',
        at,
        `"${written}" has a minus sign, and a measure here has none.`,
        'Say the other way: "forward" for "aft", "below" for "up".',
      )
  }
}

function tellQuoted(token: IToken, first: boolean, source: Source, findings: Finding[]): void {
  if (first) retype(token, QuotedFirst)
  if ((token.payload as SaidWords).closed) return
  const at = { source: source.name, start: token.startOffset, end: token.startOffset + 1 }
  findings.push(
    error(
      'syntax/open-quote',
      at,
      'These quotation marks are opened and never closed.',
      'Close them on the same line.',
    ),
  )
}

/** The next token that is no odd mark. */
function afterMarks(tokens: readonly IToken[], from: number): IToken | undefined {
  let next = from + 1
  while (tokens[next]?.tokenType === OddMark) next++
  return tokens[next]
}

/** The last of a run of odd marks that touch each other. */
function lastOfMarks(tokens: readonly IToken[], from: number): number {
  let last = from
  while (tokens[last + 1]?.tokenType === OddMark && touches(tokens[last], tokens[last + 1])) last++
  return last
}

const touches = (a: IToken | undefined, b: IToken | undefined) =>
  a !== undefined && endOf(a) === b?.startOffset

const odd: Readonly<Record<string, string>> = {
  ':': 'A colon is not needed: a name ends where a small word, a number or a comma follows.',
  ';': 'A comma parts clauses; a new line parts more.',
  '.': 'A full stop is not needed outside prose and quotation marks.',
  '=': 'Nothing is set equal: say the name, then what there is to say of it.',
  '(': 'Put a remark behind "#".',
  '[': 'Put a remark behind "#".',
  '{': 'Setting in takes the place of braces.',
  '+': 'There are no sums here.',
  '*': 'There are no sums here.',
  '/': 'A fraction is written "2 1/2 in"; a remark stands behind "#".',
}

function oddMark(source: Source, first: IToken, last: IToken): Finding {
  const at = { source: source.name, start: first.startOffset, end: endOf(last) }
  const marks = source.text.slice(at.start, Math.min(at.end, at.start + 12))
  const remedy = odd[marks[0] ?? ''] ?? 'Take it out, or put the words that hold it between double quotes.'
  return error('syntax/odd-mark', at, `${shown(marks)} means nothing here.`, remedy)
}

/** Marks as a reader can see them: what is invisible is told by its number. */
function shown(marks: string): string {
  if (/^[\p{P}\p{S}\p{N}]+$/u.test(marks)) return `"${marks}"`
  const code = (marks.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')
  return `The mark U+${code}`
}
