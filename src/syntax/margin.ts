import type { IToken, TokenType } from 'chevrotain'
import type { Finding } from '../findings/index.ts'
import { nearest, type Source } from '../text/index.ts'
import {
  meantWord,
  offered,
  pageBelow,
  readAs,
  stranger,
  stray,
  unreadPage,
  wordsBeginning,
} from './page-word.ts'
import { endOf, error, tokenSpan } from './said.ts'
import {
  Comma,
  Count,
  GoesOn,
  LineEnd,
  LineStart,
  Measure,
  page,
  QuotedFirst,
  SetIn,
  SetOut,
  said,
  ToOrder,
  Word,
} from './tokens.ts'
import { retype } from './wording.ts'
import { pageWords } from './words.ts'

/**
 * Turns the newlines into `LineEnd`, `SetIn` and `SetOut` by the margins of the lines. Blank lines and remarks do not count. What
 * stands first at the margin is a page word, or read as the one it is clearly meant for; a line there that has none is left
 * out with all that is set in below it.
 */
export function setMargins(tokens: readonly IToken[], source: Source, findings: Finding[]): IToken[] {
  const setting: Setting = {
    source,
    findings,
    tokens,
    begun: undefined,
    out: [],
    levels: [0],
    page: undefined,
    strangers: false,
    strays: false,
  }
  let at = 0
  while (at < tokens.length) {
    const start = tokens[at]?.tokenType === LineStart ? at + 1 : at
    let end = start
    while (end < tokens.length && tokens[end]?.tokenType !== LineStart) end++
    if (end > start) setLine(setting, tokens.slice(start, end), tokens[start - 1], end)
    at = end
  }
  for (let depth = setting.levels.length; depth > 1; depth--) setting.out.push(setOut)
  return setting.out
}

interface Setting {
  readonly source: Source
  readonly findings: Finding[]
  readonly tokens: readonly IToken[]
  /** All words that begin a line of the text, gathered when one is misspelt. */
  begun: ReadonlySet<string> | undefined
  readonly out: IToken[]
  /** The column of every open level, the margin first. */
  levels: number[]
  /** The page word under which lines now stand; undefined where they are left out. */
  page: TokenType | undefined
  /** Whether the last line at the margin was already told to be out of place. */
  strangers: boolean
  /** Whether a line of this page was already told to stand at the margin. */
  strays: boolean
}

function setLine(setting: Setting, line: readonly IToken[], start: IToken | undefined, end: number): void {
  const first = line[0] as IToken
  const column = columnOf(setting.source.text, first, start)
  const opens = column > 1 ? undefined : page[first.image.toLowerCase() as keyof typeof page]
  if (column === 0 || (column === 1 && opens !== undefined)) setPage(setting, line, column, opens, end)
  else if (setting.page === undefined) leaveOut(setting, line)
  else setUnderPage(setting, line, column)
}

function setUnderPage(setting: Setting, line: readonly IToken[], column: number): void {
  if (!canBegin(setting, line)) return
  const level = standsTooDeep(setting, column, line) ? 1 : levelFor(setting, column, line[0] as IToken)
  const { out, levels } = setting
  if (level === levels.length) {
    levels.push(column)
    out.push(setIn)
  }
  while (levels.length > level + 1) {
    levels.pop()
    out.push(setOut)
  }
  if (goesOn(setting, line)) out.push(goesOnMark)
  push(setting, line)
}

/**
 * Whether a line with a name is set in below an entry that takes none, and so can only be one more of the entries. Told as advice.
 */
function standsTooDeep(
  { levels, page: here, findings, source }: Setting,
  column: number,
  line: readonly IToken[],
) {
  const [first] = line
  const [, meant] = levels
  if (first?.tokenType !== Word || meant === undefined || here === undefined) return false
  if (levels.length !== 2 || column - meant < 2 || !namesNothingBelow.has(here)) return false
  findings.push(advice(source, first, column, meant))
  return true
}

/** Pages whose entries take a gear and clauses below them, and nothing with a name. */
const namesNothingBelow: ReadonlySet<TokenType> = new Set([
  page.spars,
  page.stays,
  page.rails,
  page.deck,
  page.stations,
])

/** A line at the margin: a page word closes all that is open and begins a page. */
function setPage(
  setting: Setting,
  line: readonly IToken[],
  column: number,
  written: TokenType | undefined,
  end: number,
): void {
  const first = line[0] as IToken
  const opens = written ?? pageMeant(setting, first, end)
  if (opens === undefined && isOfThePageAbove(setting, line)) {
    setStray(setting, line)
    return
  }
  for (let depth = setting.levels.length; depth > 1; depth--) setting.out.push(setOut)
  setting.levels = [0]
  setting.page = opens
  setting.strays = false
  if (opens === undefined) {
    const offers = nearest(first.image, pageWords)
    if (offers.length > 0 || !setting.strangers)
      setting.findings.push({ ...stranger(setting.source, first, offers), explains: [unreadPage] })
    setting.strangers = offers.length === 0
    return
  }
  setting.strangers = false
  if (column > 0) setting.findings.push(advice(setting.source, first, column, 0))
  retype(first, opens)
  push(setting, line)
}

/**
 * Whether a line at the margin is no page word gone wrong but one of the lines of the page above: it says more than the few words
 * that a heading would be.
 */
function isOfThePageAbove({ page: here }: Setting, line: readonly IToken[]): boolean {
  const [first] = line
  if (here === undefined || first === undefined || nearest(first.image, pageWords).length > 0) return false
  return onlyGoesOn.has(first.tokenType) || line.some(({ tokenType }) => saysMore.has(tokenType))
}

const saysMore: ReadonlySet<TokenType> = new Set([Comma, Measure, Count])

/** A line that has slipped out to the margin, read as if it were set in; of several that follow each other the first is told. */
function setStray(setting: Setting, line: readonly IToken[]): void {
  const first = line[0] as IToken
  if (!onlyGoesOn.has(first.tokenType)) {
    if (!setting.strays) setting.findings.push(stray(setting.source, first))
    setting.strays = true
  }
  setUnderPage(setting, line, setting.levels[1] ?? 2)
}

/** The page that a word at the margin is read as, with what is told of it. */
function pageMeant(setting: Setting, first: IToken, end: number): TokenType | undefined {
  setting.begun ??= wordsBeginning(setting.tokens)
  const meant = meantWord(first, setting.begun, pageBelow(setting.tokens, end))
  if (meant === undefined) return undefined
  setting.findings.push(readAs(setting.source, first, meant))
  return page[meant]
}

/** A line set in where there is no page. A page word that was misspelt has been told already. */
function leaveOut(setting: Setting, line: readonly IToken[]): void {
  if (
    setting.out.length > 0 ||
    setting.strangers ||
    setting.findings.some(f => f.rule === 'syntax/page-word')
  )
    return
  setting.strangers = true
  const at = tokenSpan(setting.source, line[0] as IToken)
  setting.findings.push(
    error(
      'syntax/no-page',
      at,
      'This is set in, and there is no page above it.',
      `Begin with a page word: ${offered}.`,
    ),
  )
}

function push(setting: Setting, line: readonly IToken[]): void {
  if (setting.page === page.set) readCommasAsThen(setting, line)
  for (const token of line) setting.out.push(token)
  const last = line[line.length - 1] as IToken
  const end = endOf(last)
  setting.out.push(virtual(LineEnd, end))
}

/** In the order of setting sails a comma can only be meant for "then". */
function readCommasAsThen({ source, findings }: Setting, line: readonly IToken[]): void {
  const commas = line.filter(({ tokenType }) => tokenType === Comma)
  const [first] = commas
  if (!first) return
  const message = 'Sails are set one after another, which is said by "then" and not by a comma.'
  const edits = commas.map(token => ({ at: tokenSpan(source, token), text: ' then' }))
  findings.push({
    ...error('syntax/word-misplaced', tokenSpan(source, first), message, 'Write "then" for each comma.'),
    fix: { title: 'Write "then"', edits },
  })
  for (const comma of commas) retype(comma, said.then)
}

/**
 * The level on which a line stands: one past the last where it is set in. One column off is read as the level beside it, with
 * advice; a line that comes out between two levels is read as one of the inner.
 */
function levelFor({ levels, findings, source }: Setting, column: number, first: IToken): number {
  const top = levels.length - 1
  const deepest = levels[top] ?? 0
  if (column === deepest) return top
  if (column > deepest) {
    if (column - deepest > 1) return top + 1
    findings.push(advice(source, first, column, top === 0 ? 2 : deepest))
    return top === 0 ? 1 : top
  }
  let outer = top
  while ((levels[outer] ?? 0) > column) outer--
  const beside = levels[outer] ?? 0
  if (beside === column) return outer
  const nearOuter = column - beside === 1 && (levels[outer + 1] ?? 0) - column > 1 && outer > 0
  const level = nearOuter ? outer : outer + 1
  findings.push(advice(source, first, column, levels[level] ?? 0))
  const slipped = (levels[level] ?? 0) - column === 1
  if (!nearOuter && !slipped) levels[level] = column
  return level
}

/** The column of a line's first word, from 0; a tab goes to the next fourth. */
function columnOf(text: string, first: IToken, start: IToken | undefined): number {
  const from = start === undefined ? 0 : start.startOffset
  let column = 0
  for (let i = from; i < first.startOffset; i++) {
    const mark = text.charCodeAt(i)
    if (mark === 10 || mark === 13) column = 0
    else column = mark === 9 ? column - (column % 4) + 4 : column + 1
  }
  return column
}

/** Whether the parser may have a line: one that begins with a word that only goes on is left out, with a finding. */
function canBegin(setting: Setting, line: readonly IToken[]): boolean {
  const first = line[0] as IToken
  if (!onlyGoesOn.has(first.tokenType)) return true
  if (first.tokenType === said.then && setting.page === page.set) return true
  setting.findings.push(
    error(
      'syntax/line-begins',
      tokenSpan(setting.source, first),
      `A line can't begin with "${first.image}".`,
      'Put it behind what it goes on from, on one line; a name that begins so stands between quotes.',
    ),
  )
  return false
}

/**
 * Whether a line begins without a name. A number begins a pin on the pages of belaying; 'top' is a name among the masts. An order's
 * acts begin with words that may be names elsewhere, and are left to the parser.
 */
function goesOn({ page: here }: Setting, [first, second]: readonly IToken[]): boolean {
  if (first === undefined) return true
  if (first.tokenType === Count) return here !== page.belay
  if (onlyWithFigure.has(first.tokenType))
    return isFigure(second) && !(first.tokenType === said.top && here === page.masts)
  if (here === page.labels && (first.tokenType === said.port || first.tokenType === said.starboard))
    return false
  return !namesBegin(first)
}

const isFigure = (token: IToken | undefined) => token?.tokenType === Measure || token?.tokenType === Count

/** A name, or a word that opens a statement of its own. */
function namesBegin({ tokenType }: IToken): boolean {
  const word = tokenType === Word || (tokenType.CATEGORIES?.includes(Word) ?? false)
  return word || opensStatement.has(tokenType)
}

const opensStatement: ReadonlySet<TokenType> = new Set([
  QuotedFirst,
  said.gear,
  said.with,
  said.then,
  ToOrder,
])
const onlyWithFigure: ReadonlySet<TokenType> = new Set([said.top, said.yards, said.roach, said.cringle])

const onlyGoesOn: ReadonlySet<TokenType> = new Set<TokenType>([
  ...(['and', 'then', 'by', 'abreast', 'aft', 'forward', 'up', 'below', 'above', 'down', 'out'] as const).map(
    word => said[word],
  ),
])

function advice(source: Source, first: IToken, column: number, meant: number): Finding {
  const at = tokenSpan(source, first)
  const margin = {
    source: source.name,
    start: lineBegin(source.text, first.startOffset),
    end: first.startOffset,
  }
  return {
    rule: 'syntax/margin',
    severity: 'note',
    at,
    message: `This line stands ${spaces(column)} in, its neighbours ${meant}; read as one of them.`,
    remedy: 'Give lines of one level one margin.',
    related: [],
    fix: { title: `Set the line in by ${spaces(meant)}`, edits: [{ at: margin, text: ' '.repeat(meant) }] },
  }
}

const spaces = (n: number) => (n === 1 ? '1 space' : `${n} spaces`)

function lineBegin(text: string, offset: number): number {
  let begin = offset
  while (begin > 0 && text[begin - 1] !== '\n' && text[begin - 1] !== '\r') begin--
  return begin
}

const virtual = (type: TokenType, offset: number): IToken => ({
  image: '',
  startOffset: offset,
  tokenTypeIdx: type.tokenTypeIdx as number,
  tokenType: type,
})
const goesOnMark = virtual(GoesOn, 0)
const setIn = virtual(SetIn, 0)
const setOut = virtual(SetOut, 0)
