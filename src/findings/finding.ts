import type { Span } from '../text/index.ts'

export type Severity = 'error' | 'warning' | 'note'
export type Slug = `${string}/${string}`

/** One result of a check, as data: the terminal, an editor, SARIF and the manual are ways to show it. */
export interface Finding {
  /** Stable for ever, and linkable: 'belay/two-on-a-pin'. */
  readonly rule: Slug
  readonly severity: Severity
  readonly at: Span
  /** What is wrong: one sentence in the trade's words, naming the thing and its place on deck. */
  readonly message: string
  /** Why it matters aboard. */
  readonly aboard?: string
  /** What to do. */
  readonly remedy?: string
  /** The other ends of the story: first use, counterpart. */
  readonly related: readonly Related[]
  /** Only where the mend is certain. */
  readonly fix?: Fix
  /** Things (addresses or spans' names) this finding already explains, so that rules after it can fold theirs. */
  readonly explains?: readonly string[]
}

export interface Related {
  readonly at: Span
  readonly message: string
}

export interface Fix {
  readonly title: string
  readonly edits: readonly { readonly at: Span; readonly text: string }[]
}

/** What a stage yields: it never fails, and never throws for a fault of the text. */
export interface Found<T> {
  readonly value: T
  readonly findings: readonly Finding[]
}
