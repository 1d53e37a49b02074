import type { IToken } from 'chevrotain'
import type { Finding, Slug } from '../findings/index.ts'
import type { Source, Span } from '../text/index.ts'

/** Where a token ends. The lexer keeps beginnings only. */
export const endOf = (token: IToken): number => token.startOffset + token.image.length

/** The span of one token. */
export const tokenSpan = (source: Source, token: IToken): Span => ({
  source: source.name,
  start: token.startOffset,
  end: endOf(token),
})

/** A finding that something can't be understood: always an error, with nothing related. */
export function error(rule: Slug, at: Span, message: string, remedy?: string): Finding {
  return { rule, severity: 'error', at, message, ...(remedy === undefined ? {} : { remedy }), related: [] }
}
