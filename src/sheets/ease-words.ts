import type { Line, LineFunction, Rig } from '../rig/index.ts'
import { functionAnswer } from './function-mark.ts'

/**
 * What is eased when a line is hauled, by kind and in the order said: ['sheet', 'tack'], ['all buntlines',
 * 'downhauls']. The own side is understood; a plural has several, and both sides where the line is a single one.
 * Lines of one last word fold: 'throat and peak halyards'. Empty where nothing is to be eased.
 */
export function easeWords(line: Line, rig: Rig): readonly string[] {
  return foldedByLastWord(groups(line, rig).map(group => ({ ...group, before: wordBefore(group, line) })))
}

/** The same in so few words that it fits where the kinds do not: 'all 8 take-in lines'. */
export function easeWordsInShort(line: Line, rig: Rig): string {
  const eased = counterpartsOf(line, rig)
  if (eased.length < 3) return easeWords(line, rig).join(', ')
  const answers = new Set(eased.map(each => each.function && functionAnswer[each.function as LineFunction]))
  const [answer, ...others] = answers
  const kind =
    others.length > 0
      ? 'lines'
      : answer === 'less'
        ? 'take-in lines'
        : answer === 'more'
          ? 'setting lines'
          : 'lines'
  return `all ${eased.length} ${kind}`
}

interface Group {
  readonly kind: string
  readonly lines: readonly Line[]
}

const counterpartsOf = (line: Line, rig: Rig): readonly Line[] =>
  line.counterparts.flatMap(address => rig.lineAt.get(address) ?? [])

/** Counterparts of one kind and one host, in the order of the first of each. */
function groups(line: Line, rig: Rig): readonly Group[] {
  const found = new Map<string, Line[]>()
  for (const each of counterpartsOf(line, rig)) {
    const key = `${each.host?.name ?? ''}\n${each.kind}`
    const group = found.get(key)
    if (group) group.push(each)
    else found.set(key, [each])
  }
  return [...found.values()].map(lines => ({ kind: lines[0]?.kind ?? '', lines }))
}

interface Said extends Group {
  /** 'other', 'both', or the name of a sail that is not the line's own; empty for its own. */
  readonly before: string
}

function wordBefore({ lines }: Group, line: Line): string {
  const [first] = lines
  if (!first) return ''
  if (line.side !== undefined && lines.every(each => each.side !== undefined && each.side !== line.side))
    return 'other'
  if (first.host?.name !== line.host?.name && !areNearlyOne(first, line)) return first.host?.name ?? ''
  return line.side !== undefined && isOnePair(lines) ? 'both' : ''
}

const isOnePair = ([first, second, ...more]: readonly Line[]): boolean =>
  more.length === 0 && second !== undefined && first?.pairKey === second.pairKey

// A sail and the spar it is named by are one to a hand on deck: a brace of the fore yard answers the fore course.
const areNearlyOne = (a: Line, b: Line): boolean => {
  const [short, long] = [a.host?.name ?? '', b.host?.name ?? ''].sort((x, y) => x.length - y.length)
  return short === '' || (long ?? '').startsWith(short ?? '')
}

/** Kinds of several words that end in one are said together, where the first of them stands: 'foot and peak brails'. */
function foldedByLastWord(groups: readonly Said[]): readonly string[] {
  const folded: Said[][] = []
  for (const group of groups) {
    const like = folded.find(([first]) => first !== undefined && foldsWith(first, group))
    if (like) like.push(group)
    else folded.push([group])
  }
  return folded.map(phrase)
}

function foldsWith(first: Said, next: Said): boolean {
  if (!first.kind.includes(' ') || !next.kind.includes(' ')) return false
  return lastWord(next.kind) === lastWord(first.kind) && next.before === first.before
}

function phrase(groups: readonly Said[]): string {
  const [first] = groups
  if (!first) return ''
  const several = groups.length > 1 || first.lines.length > 1
  const last = lastWord(first.kind)
  const kinds = groups.map(({ kind }) => kind.slice(0, kind.length - last.length).trim())
  const noun = several && !first.lines.some(({ foreign }) => foreign) ? plural(last) : last
  return [first.before, listed(kinds), noun].filter(word => word !== '').join(' ')
}

const lastWord = (kind: string): string => kind.slice(kind.lastIndexOf(' ') + 1)

const plural = (noun: string): string => (/(s|x|ch|sh)$/.test(noun) ? `${noun}es` : `${noun}s`)

const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
