import type { Finding, Fix, Severity, Slug } from '../../findings/index.ts'
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

/** A finding of the builder, an error unless told otherwise. */
export function finding(rule: Slug, at: Span, message: string, told: Told = {}): Finding {
  const { severity = 'error', related = [], ...rest } = told
  return { rule, severity, at, message, related, ...rest }
}

/** "There is no rail "fore prot". Did you mean "fore port"?" */
export function unknownName(
  what: string,
  written: { readonly words: string; readonly span: Span },
  candidates: Iterable<string>,
  explains: readonly string[] = [],
): Finding {
  const near = nearest(written.words, candidates)
  const meant = isBare(written) ? surelyMeant(written.words, near) : undefined
  return finding('name/unknown', written.span, `There is no ${what} "${written.words}".`, {
    remedy:
      near.length > 0
        ? `Did you mean ${near.map(name => `"${name}"`).join(', ')}?`
        : `Declare the ${what}, or mend the name.`,
    ...(meant === undefined ? {} : { fix: respelt(written.span, meant) }),
    explains,
  })
}

/** Whether a name stands in the text letter for letter: not between quotes, nor with wide gaps in it. */
const isBare = ({ words, span }: { readonly words: string; readonly span: Span }) =>
  span.end - span.start === words.length

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
