import type { Finding, Fix, Severity, Slug } from '../../findings/index.ts'
import { nameKey } from '../../syntax/index.ts'
import { nearest, type Span, surelyMeant } from '../../text/index.ts'

/** Where the builder puts its findings: it never fails, it says. */
export type Say = (finding: Finding) => void

interface Told {
  readonly severity?: Severity
  readonly aboard?: string
  readonly remedy?: string
  readonly fix?: Fix
  readonly related?: Finding['related']
  readonly explains?: readonly string[]
}

/** A name as the text has it. */
interface Written {
  readonly words: string
  readonly span: Span
}

/** A finding of the builder, an error unless told otherwise. */
export function finding(rule: Slug, at: Span, message: string, told: Told = {}): Finding {
  const { severity = 'error', related = [], ...rest } = told
  return { rule, severity, at, message, related, ...rest }
}

/** "There is no rail "fore prot". Did you mean "fore port"?" Where no name is near, the remedy is `otherwise`. */
export function unknownName(
  what: string,
  written: Written,
  candidates: Iterable<string>,
  explains: readonly string[] = [],
  joint: 'and' | 'then' = 'and',
  otherwise = `Declare the ${what}, or mend the name.`,
): Finding {
  const names = [...candidates]
  const parts = namesIn(written.words, names)
  if (parts.length > 0) return runTogether(written, parts, explains, joint)
  const near = nearest(written.words, names)
  const meant = isBare(written) ? surelyMeant(written.words, near) : undefined
  return finding('name/unknown', written.span, `There is no ${what} "${written.words}".`, {
    remedy: near.length > 0 ? `Did you mean ${near.map(name => `"${name}"`).join(', ')}?` : otherwise,
    ...(meant === undefined ? {} : { fix: respelt(written.span, meant) }),
    explains,
  })
}

/** "mainsail gaff mainsail boom": two names and more with nothing to part them. */
function runTogether(
  written: Written,
  parts: readonly string[],
  explains: readonly string[],
  joint: 'and' | 'then',
): Finding {
  const parted = parts.join(` ${joint} `)
  const message = `"${written.words}" is several names with nothing between them.`
  return finding('name/unknown', written.span, message, {
    remedy: `Say "${parted}".`,
    ...(isBare(written) ? { fix: respelt(written.span, parted) } : {}),
    explains: [...explains, ...parts],
  })
}

/** The fewest names, two at least, that follow each other in a run of words; none where it is no such run. */
export function namesIn(run: string, candidates: readonly string[]): readonly string[] {
  const words = nameKey(run).split(' ')
  if (words.length < 2 || words.length > longestRun) return []
  const names = new Set(candidates.map(nameKey))
  const best: (readonly string[] | undefined)[] = [[]]
  for (let end = 1; end <= words.length; end++) {
    for (let begin = 0; begin < end; begin++) {
      const before = best[begin]
      const name = words.slice(begin, end).join(' ')
      const isBest = before && before.length + 1 < (best[end]?.length ?? Number.POSITIVE_INFINITY)
      if (isBest && names.has(name)) best[end] = [...before, name]
    }
  }
  const parts = best[words.length] ?? []
  return parts.length > 1 ? parts : []
}

/** So many words are looked through for names in them. */
const longestRun = 40

/** Whether a name stands in the text letter for letter: not between quotes, nor with wide gaps in it. */
const isBare = ({ words, span }: Written) => span.end - span.start === words.length

/** A name put in the place of one misspelt. */
const respelt = (at: Span, name: string): Fix => ({
  title: `Read "${name}"`,
  edits: [{ at, text: name }],
})

/** 'a, b and c'. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}

/** First letter large, as printed at the head of a name. */
export function capitalised(words: string): string {
  const [first = ''] = words
  return first.toUpperCase() + words.slice(first.length)
}
