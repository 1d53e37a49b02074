import type { IToken } from 'chevrotain'
import type { Finding } from '../findings/index.ts'
import { lineColumn, lineStarts, type Source } from '../text/index.ts'
import { error, tokenSpan } from './said.ts'
import { Comma, LineEnd, Measure, said, Word } from './tokens.ts'

/** Where the parser could not go on: the word it met, the one before it, and the rules it was in, the innermost last. */
export interface Stumble {
  readonly token: IToken
  readonly before: IToken | undefined
  readonly rules: readonly string[]
  /** How a list should be said that has commas between, where the parser met its "and". */
  readonly list: string | undefined
}

/** What is told of a text: by the passes before the parser, by its rules, and where it stumbled. */
export interface Told {
  readonly before: readonly Finding[]
  readonly inRules: readonly Finding[]
  readonly stumbles: readonly Stumble[]
}

/**
 * All findings without those that only follow from another: behind an odd mark or an open quotation the rest of the line says
 * little, and where the order of the words is wrong one finding a line is enough.
 */
export function foldFindings(source: Source, { before, inRules, stumbles }: Told): Finding[] {
  if (before.length + inRules.length + stumbles.length === 0) return []
  const starts = lineStarts(source.text)
  const lineOf = ({ at }: Finding) => lineColumn(starts, at.start).line
  const broken = new Set<number>()
  const first = before.filter(finding => {
    if (!breaksLine.has(finding.rule)) return true
    const told = broken.has(lineOf(finding))
    broken.add(lineOf(finding))
    return !told
  })
  const sound = inRules.filter(finding => !broken.has(lineOf(finding)))
  const surely = sound.filter(({ rule }) => !mayFollow.has(rule))
  for (const finding of surely) broken.add(lineOf(finding))
  const kept = [...first, ...surely]
  for (const finding of [
    ...sound.filter(({ rule }) => mayFollow.has(rule)),
    ...stumbles.map(s => stumbleFinding(s, source)),
  ]) {
    const line = lineOf(finding)
    if (!broken.has(line)) kept.push(finding)
    broken.add(line)
  }
  return kept
}

const breaksLine: ReadonlySet<string> = new Set([
  'syntax/odd-mark',
  'syntax/open-quote',
  'syntax/line-begins',
])
const mayFollow: ReadonlySet<string> = new Set([
  'syntax/comma-missing',
  'syntax/direction-missing',
  'syntax/one-side',
])

/** 'works main rail and boom cleat and quarter cleat', of 'works main rail, boom cleat and quarter cleat'. */
export function listParted(tokens: readonly IToken[], at: number): string | undefined {
  if (tokens[at]?.tokenType !== said.and) return undefined
  const isListed = ({ tokenType }: IToken) => listed.has(tokenType)
  const near = tokens.slice(Math.max(0, at - longestList), at + longestList)
  const first = near.slice(0, Math.min(at, longestList)).findLastIndex(token => !isListed(token))
  const word = near[first]
  if (word?.tokenType !== said.works && word?.tokenType !== said.takes) return undefined
  const rest = near.slice(first + 1)
  const end = rest.findIndex(token => !isListed(token))
  const list = rest
    .slice(0, end < 0 ? rest.length : end)
    .map(one => (one.tokenType === Comma ? 'and' : one.image))
  if (list.at(-1) === 'and') list.pop()
  return `${word.image} ${list.join(' ')}`
}

/** So many words are looked at on either side of an "and". */
const longestList = 60

const listed: ReadonlySet<unknown> = new Set([Word, Comma, said.and])

function stumbleFinding({ token, before: previous, rules, list }: Stumble, source: Source): Finding {
  const before = previous !== undefined && previous.image !== '' ? `"${brief(previous.image)}"` : undefined
  const rule = rules.findLast(name => examples[name] !== undefined)
  const example = rule === undefined ? undefined : examples[rule]
  const asIn = example === undefined ? undefined : `As in "${example}".`
  const ends = token.tokenType === LineEnd || token.image === ''
  if (
    previous?.tokenType === Measure &&
    rule !== undefined &&
    wantsWay.has(rule) &&
    (ends || token.tokenType === Comma)
  ) {
    const message = `${before} wants a word that tells which way: up, aft, forward, below, out, port or starboard.`
    return error('syntax/direction-missing', tokenSpan(source, previous), message)
  }
  if (ends) {
    const at =
      previous === undefined ? { source: source.name, start: 0, end: 0 } : tokenSpan(source, previous)
    return error(
      'syntax/unfinished',
      at,
      `The line ends behind ${before ?? 'nothing'}, and more is due.`,
      asIn,
    )
  }
  const at = tokenSpan(source, token)
  const word = `"${brief(token.image)}"`
  if (example === undefined && token.tokenType === Word && before !== undefined) {
    const message = `${word} follows ${before} without a breath between.`
    return error(
      'syntax/comma-missing',
      at,
      message,
      `Put a comma before it. If ${before} is part of a name, put the whole name between quotes, wherever it stands.`,
    )
  }
  if (list !== undefined) {
    const message = 'A list has "and" between its names, and no comma.'
    return error('syntax/word-misplaced', at, message, `Say "${list}".`)
  }
  const message = before === undefined ? `${word} can't stand here.` : `${word} can't follow ${before}.`
  return error(
    'syntax/word-misplaced',
    at,
    message,
    asIn ?? 'Mend the line: a name, then what there is to say of it, with commas between.',
  )
}

/** What leads somewhere, where a height alone says too little. */
const wantsWay: ReadonlySet<string> = new Set(['to', 'at', 'figured', 'stepped', 'fixed'])

const brief = (image: string) => (image.length > 40 ? `${image.slice(0, 37)}...` : image)

/** How each clause is said; what the parser calls it is nobody's concern. */
const examples: Readonly<Record<string, string>> = {
  like: 'like fore mast',
  at: 'at cap 0.20 m aft 0.60 m below',
  on: 'on mainsail gaff and mainsail boom',
  called: 'called "Bowsprit and jib-boom"',
  short: 'short "F t bunt"',
  within: 'in m and mm',
  conjectural: 'conjectural by "a photograph of 1911"',
  stepped: 'stepped 7.40 m aft 1.60 m up',
  raked: 'raked 3 deg aft',
  yards: 'yards 0.50 m forward',
  doubled: 'doubled 1.70 m',
  fixed: 'fixed 11.50 m up',
  sheeted: 'sheeted to fore yard',
  reefs: 'reefs 1.20 m and 2.40 m',
  bracesTo: 'braces to 35 deg',
  cloth: 'number 2 canvas',
  carries: 'every topsail and fore course, 1 reef in spanker',
  roach: 'roach 0.50 m',
  cringle: 'cringle 4.29 m out',
  to: 'to gaff end',
  from: 'from 1.20 m aft 2.70 m up to 0.30 m forward 2.92 m up',
  figured: '9.40 m aft 0.90 m out 6.70 m up',
  fits: 'fits square sail on hoisting yard',
  shackled: 'clews shackled to foot yard',
  without: 'without halyard and buntline',
  rove: 'rove tye and runner and luff',
  hoists: 'hoists yard',
  hoistsFrom: 'hoists from 14.40 m to 16.90 m up',
  does: 'draws clew forward',
  against: 'against clewline and other sheet',
  through: 'through lead block then yard block to bunt cringle',
  travels: 'travels 3.20 m',
  shifts: 'shifts to weather',
  cut: 'cut 45 m',
  sides: 'port and starboard',
  around: 'round main mast',
  marked: 'marked FF-A',
  pinNumber: 'pin 5',
  top: 'top 2.60 m up',
  works: 'works fore rail and fore fife rail',
  takes: 'takes helm',
  manned: 'manned by foremast and mainmast',
  for: 'for fore topsail halyard',
  allow: 'allow belay/two-on-a-pin because the two are never worked together',
  act: 'haul lee sheet, ease lee clewline',
  cautions: 'cautions 5 and 7',
  answer: 'answer "Lower away."',
  report: 'report "Yard down, fast."',
  before: 'before "The lower topsail is set."',
  jams: 'if it jams "Hold. Word aft."',
  berth: '7 port jib halyard, starboard flying jib halyard',
  broughtIn: 'bring in standard gear',
  belayedOn: 'belay on fore rail',
  belayed: 'belay foresail sheet to fore sheet cleat',
  succession: 'set mainsail then foresail then jib',
}
