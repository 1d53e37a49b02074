import type { IToken } from 'chevrotain'
import type { Finding } from '../findings/index.ts'
import { clearlyNearest, nearest, type Source, surelyMeant } from '../text/index.ts'
import { error, tokenSpan } from './said.ts'
import { LineStart } from './tokens.ts'
import { type PageWord, pageWords } from './words.ts'

/**
 * The page word that a word at the margin is clearly meant for: of two as near, the one whose page the text lacks, or that what is
 * set in below speaks of.
 */
export function meantWord(
  { image }: IToken,
  begun: ReadonlySet<string>,
  below: readonly IToken[],
): PageWord | undefined {
  const lacking = pageWords.filter(word => !begun.has(word))
  const meant = clearlyNearest(image, pageWords) ?? clearlyNearest(image, lacking) ?? spokenOf(image, below)
  return pageWords.find(word => word === meant)
}

/** That a word is read as a page word. */
export function readAs(source: Source, first: IToken, meant: PageWord): Finding {
  const { image } = first
  const at = tokenSpan(source, first)
  const message = `"${image}" is no page word, and is read as "${meant}".`
  const fix = { title: `Read "${meant}"`, edits: [{ at, text: meant }] }
  return {
    ...error('syntax/page-word', at, message, `Write "${meant}".`),
    ...(surelyMeant(image, pageWords) === meant ? { fix } : {}),
  }
}

/** That a word at the margin is no page word, nor read as one. */
export function stranger(source: Source, first: IToken, offers: readonly string[]): Finding {
  const at = tokenSpan(source, first)
  if (offers.length > 0) {
    const message = `"${first.image}" is no page word. Nearest: ${offers.join(', ')}.`
    return error('syntax/page-word', at, message, 'What is set in below it is not read until it is mended.')
  }
  return error(
    'syntax/page-word',
    at,
    `"${first.image}" stands at the margin, where only page words stand.`,
    `Set it in by two spaces to keep it on its page, or begin with a page word: ${offered}.`,
  )
}

/** That a line at the margin is read as one of the page above. */
export function stray(source: Source, first: IToken): Finding {
  return error(
    'syntax/page-word',
    tokenSpan(source, first),
    `"${first.image}" stands at the margin, where only page words stand; it is read as a line of the page above.`,
    `Set it in by two spaces, and the lines below that stand so; or begin a page of its own with a page word: ${offered}.`,
  )
}

export const offered = `${pageWords.slice(0, -1).join(', ')} or ${pageWords[pageWords.length - 1]}`

/** What a page that is left out explains: names that would stand on it, and all that seems wanting in the vessel. */
export const unreadPage = 'a page that is not read'

/** Of several page words as near, the one of whose page most is said in what is set in below. */
function spokenOf(image: string, below: readonly IToken[]): string | undefined {
  const words = below.map(token => token.image.toLowerCase())
  const scores = nearest(image, pageWords)
    .map(word => ({ word, score: words.filter(one => hallmarks[word as PageWord]?.has(one)).length }))
    .sort((a, b) => b.score - a.score)
  const [most, next] = scores
  return most && most.score > (next?.score ?? 0) ? most.word : undefined
}

/** Words that are said on some pages, of those that one wrong letter makes alike. */
const hallmarks: Readonly<Partial<Record<PageWord, ReadonlySet<string>>>> = {
  rails: new Set(['marked', 'pins']),
  sails: new Set(['square', 'headsail', 'staysail', 'sail', 'tack', 'clew', 'head', 'foot']),
  spars: new Set(['yard', 'boom', 'gaff', 'bowsprit', 'long', 'hoists', 'fixed']),
  stays: new Set(['stay', 'shrouds', 'backstay', 'backstays']),
}

/** The words of the lines that follow, as far as the next at the margin. */
export function pageBelow(tokens: readonly IToken[], from: number): readonly IToken[] {
  let end = from
  while (end < tokens.length && !endsPage(tokens[end], tokens[end + 1])) end++
  return tokens.slice(from, end)
}

/** Whether what follows a newline stands at the margin. */
const endsPage = (token: IToken | undefined, next: IToken | undefined): boolean =>
  token?.tokenType === LineStart && /[\r\n]$/.test(token.image) && next?.tokenType !== LineStart

/** All words that begin a line of a text. */
export function wordsBeginning(tokens: readonly IToken[]): ReadonlySet<string> {
  const words = new Set<string>()
  let isFirst = true
  for (const { tokenType, image } of tokens) {
    if (isFirst) words.add(image)
    isFirst = tokenType === LineStart
  }
  return words
}
