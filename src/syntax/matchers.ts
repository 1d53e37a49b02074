import { type FigureRead, figureAt } from '../measure/index.ts'
import type { ProseWord } from './words.ts'

/**
 * Finders of words, numbers, quoted words and prose at an offset of a text. They are functions, and not patterns, because
 * Chevrotain drops the `u` flag of a pattern; with each stand the characters it can begin with.
 */
export type Matcher = (text: string, offset: number) => Matched | null
export type Matched = [string] & { payload?: unknown }

/** Words taken from the text: what stands between quotes, or follows a prose word. `start` and `end` are their offsets. */
export interface SaidWords {
  readonly text: string
  readonly start: number
  readonly end: number
  /** Of quoted words: whether the closing mark was found. */
  readonly closed: boolean
}

/** A name's word or a small word: letters of any script, then digits, hyphens and apostrophes too, and inner dots and slashes. */
export const matchWord: Matcher = (text, offset) => {
  const end = plainEnd(text, offset)
  if (end > offset && endsWord(text.charCodeAt(end))) return [text.slice(offset, end)]
  anyWord.lastIndex = offset
  return anyWord.exec(text) as unknown as Matched | null
}

/** Where a word of plain letters ends, as nearly all are; it is looked for letter by letter, since a pattern takes thrice as long. */
function plainEnd(text: string, offset: number): number {
  if (!isLetter(text.charCodeAt(offset))) return offset
  let end = offset + 1
  while (isOfWord(text.charCodeAt(end))) end++
  return end
}

const isLetter = (code: number) => (code >= 97 && code <= 122) || (code >= 65 && code <= 90)
const isOfWord = (code: number) => isLetter(code) || (code >= 48 && code <= 57) || code === 45 || code === 39
/** A blank, a comma, the line's end or the text's. */
const endsWord = (code: number) =>
  code === 32 || code === 44 || code === 10 || code === 13 || Number.isNaN(code)

const anyWord =
  /\p{L}[\p{L}\p{M}\p{N}'’_\u2010\u2011-]*(?:[./][\p{L}\p{N}][\p{L}\p{M}\p{N}'’_\u2010\u2011-]*)*/uy

/** A number with or without its unit; the payload is what `figureAt` read. */
export const matchFigure: Matcher = (text, offset) => {
  const read = figureAt(text, offset)
  return read === undefined ? null : withPayload<FigureRead>(read.written, read)
}

/** Words between quotation marks, straight or curly. What is never closed ends with its line. */
export const matchQuoted: Matcher = (text, offset) => {
  const closing = text[offset] === '"' ? straight : text[offset] === '«' ? angled : curly
  closing.lastIndex = offset + 1
  const match = closing.exec(text)
  if (match === null) return null
  const inner = match[0]
  const closed = /["”“»]$/.test(inner)
  const bare = closed ? inner.slice(0, -1) : inner.trimEnd()
  const said: SaidWords = { text: plainly(bare), start: offset + 1, end: offset + 1 + bare.length, closed }
  return withPayload(text.slice(offset, offset + 1 + (closed ? inner.length : bare.length)), said)
}
const straight = /[^"\r\n]*"?/y
const curly = /[^”“"\r\n]*[”“"]?/y
const angled = /[^»\r\n]*»?/y

/** A prose word and the prose behind it, which ends before a remark, at the line's end, or (of a phrase) at a comma. */
export function matchProse(opening: ProseWord): Matcher {
  const phrase = opening === 'when' || opening === 'free for'
  const words = opening.replace(' ', '[ \\t\\u00a0]+')
  const opens = new RegExp(words, 'iy')
  const second = opening.charCodeAt(1)
  const rest = phrase ? /(?:[^\r\n,#]|(?<=\S)#)*/y : /(?:[^\r\n#]|(?<=\S)#)*/y
  return (text, offset) => {
    if (lowered(text.charCodeAt(offset + 1)) !== second) return null
    opens.lastIndex = offset
    if (!opens.test(text)) return null
    wordGoesOn.lastIndex = opens.lastIndex
    if (wordGoesOn.test(text)) return null
    blanks.lastIndex = opens.lastIndex
    blanks.test(text)
    const start = blanks.lastIndex
    rest.lastIndex = start
    const bare = (rest.exec(text)?.[0] ?? '').trimEnd()
    const said: SaidWords = { text: plainly(bare), start, end: start + bare.length, closed: true }
    return withPayload(text.slice(offset, bare === '' ? start : said.end), said)
  }
}

/** The small letter of a letter. */
const lowered = (code: number) => code | 0x20

// Apart from the words themselves: letters of any script, looked for in either case, take V8 long to compile.
const wordGoesOn = /[\p{L}\p{M}\p{N}'’_./-]/uy
const blanks = /[ \t\u00a0]*/y

/** One character that means nothing in the language. */
export const matchOddMark: Matcher = (text, offset) => [String.fromCodePoint(text.codePointAt(offset) ?? 0)]

/** One blank between words, and nothing that could be mistaken for the order of reading. */
function plainly(words: string): string {
  if (!toBePlain.test(words)) return words
  return words.replace(hiddenMarks, '').replace(/\s+/g, ' ').trim()
}
// biome-ignore lint/suspicious/noControlCharactersInRegex: NUL is one of the marks looked for.
const toBePlain = /[\u0000\u202a-\u202e\u2066-\u2069]|[^\S ]|^ | $| {2}/

/** Marks that change how a text looks without being seen: orders of direction, and NUL. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: NUL is one of the marks looked for.
export const hiddenMarks = /[\u0000\u202a-\u202e\u2066-\u2069]+/g

function withPayload<T>(image: string, payload: T): Matched {
  const matched: Matched = [image]
  matched.payload = payload
  return matched
}

const range = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i)

/** One code out of every bucket into which Chevrotain's lexer sorts characters beyond Latin-1. */
const beyondLatin = range(1, 257).map(bucket => Math.max(256, Math.ceil(bucket * 255)))

/** The characters with which each kind can begin, as Chevrotain wants them told. */
export const beginnings = {
  word: [...range(65, 90), ...range(97, 122), ...range(0xaa, 0xff), ...beyondLatin],
  figure: [...range(48, 57), 45, 0xbc, 0xbd, 0xbe, ...beyondLatin],
  quoted: [34, 0xab, ...beyondLatin],
  any: [...range(0, 255), ...beyondLatin],
  prose: (opening: ProseWord) => [opening.charCodeAt(0), opening.toUpperCase().charCodeAt(0)],
} as const
