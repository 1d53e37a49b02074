import { createToken, Lexer, type TokenType } from 'chevrotain'
import {
  beginnings,
  type Matcher,
  matchFigure,
  matchOddMark,
  matchProse,
  matchQuoted,
  matchWord,
} from './matchers.ts'
import {
  type BesideWord,
  besideWords,
  type PageWord,
  type PlacedWord,
  type ProseWord,
  pageWords,
  placedWords,
  proseWords,
  type SmallWord,
  smallWords,
} from './words.ts'

/*
 * The kinds of word and mark. The lexer finds those that have a pattern; small words and page words are words until
 * `wording.ts` has looked at them, and line ends and margins come from `margin.ts`. A label is how the kind is said
 * in the grammar's reference.
 */
export const Word = matching('Word', 'WORD', matchWord, beginnings.word)
export const Quoted = matching('Quoted', 'QUOTED', matchQuoted, beginnings.quoted)
/** Quoted words that begin a line: there they are a name. */
export const QuotedFirst = unseen('QuotedFirst', 'QUOTED')
export const Comma = createToken({ name: 'Comma', label: '","', pattern: ',' })
/** A number before it is known to be a measure or a count. */
export const Figure = matching('Figure', 'figure', matchFigure, beginnings.figure)
export const OddMark = matching('OddMark', 'odd mark', matchOddMark, beginnings.any)
/** The newline and the margin before a line's first word. */
export const LineStart = createToken({
  name: 'LineStart',
  pattern: /(?:\r\n|\r|\n)[ \t\u00a0]*/,
  line_breaks: true,
})

export const Measure = unseen('Measure', 'MEASURE')
export const Count = unseen('Count', 'NUMBER')
export const RuleName = unseen('RuleName', 'CHECK')
/** The 'to' of 'to set' and 'to douse', at the beginning of a line. */
export const ToOrder = unseen('ToOrder', '"to"')
/** No width: the line begins without a name, and goes on about the statement above. */
export const GoesOn = unseen('GoesOn', 'GoesOn')
export const LineEnd = unseen('LineEnd', 'LineEnd')
export const SetIn = unseen('SetIn', 'SetIn')
export const SetOut = unseen('SetOut', 'SetOut')

/** Small words, and words that mean something in their place only; the latter are words too, so names may hold them. */
export const said = {
  ...keyed<SmallWord>(smallWords, 'small', []),
  ...keyed<PlacedWord>(placedWords, 'placed', [Word]),
  ...keyed<BesideWord>(besideWords, 'beside', []),
}

/** Page words: first at the margin. */
export const page = keyed<PageWord>(pageWords, 'page', [])

/** Each small word that takes prose, together with its prose. */
export const prose = Object.fromEntries(
  proseWords.map(opening => [
    opening,
    matching(
      `prose_${opening.replace(' ', '_')}`,
      proseLabel(opening),
      matchProse(opening),
      beginnings.prose(opening),
    ),
  ]),
) as Record<ProseWord, TokenType>

// Marks that can't be seen have their finding already, and are passed over like blanks.
const Blank = createToken({
  name: 'Blank',
  // biome-ignore lint/suspicious/noControlCharactersInRegex: NUL is one of the marks passed over.
  pattern: /[ \t\u0000\u202a-\u202e\u2066-\u2069\ufeff\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]+/,
  group: Lexer.SKIPPED,
})
const Remark = createToken({ name: 'Remark', pattern: /#[^\r\n]*/, group: Lexer.SKIPPED })

/** The kinds the lexer looks for, in the order in which it tries them. */
export const lexed: TokenType[] = [
  ...[LineStart, Blank, Comma, ...Object.values(prose), Word, Figure, Quoted, Remark, OddMark],
]

/** The kinds that the parser may meet. */
export const vocabulary: TokenType[] = [
  ...[Word, Quoted, QuotedFirst, Comma, Measure, Count, RuleName, ToOrder, GoesOn, LineEnd, SetIn, SetOut],
  ...[...Object.values(said), ...Object.values(page), ...Object.values(prose)],
]

function matching(
  name: string,
  label: string,
  exec: Matcher,
  start_chars_hint: readonly number[],
): TokenType {
  return createToken({
    name,
    label,
    pattern: { exec },
    start_chars_hint: [...start_chars_hint],
    line_breaks: false,
  })
}

/** A kind that no pattern finds. */
function unseen(name: string, label: string, categories: TokenType[] = []): TokenType {
  return createToken({ name, label, pattern: Lexer.NA, categories })
}

function keyed<K extends string>(
  words: readonly K[],
  kind: string,
  categories: TokenType[],
): Record<K, TokenType> {
  return Object.fromEntries(
    words.map(word => [word, unseen(`${kind}_${word}`, `"${word}"`, categories)]),
  ) as Record<K, TokenType>
}

function proseLabel(opening: ProseWord): string {
  const words = opening
    .split(' ')
    .map(word => `"${word}"`)
    .join(' ')
  if (opening === 'aloft') return `${words} [ NUMBER "hands" "," ] PROSE`
  return `${words} ${opening === 'when' || opening === 'free for' ? 'PHRASE' : 'PROSE'}`
}
