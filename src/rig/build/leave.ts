import type { Finding, Slug } from '../../findings/index.ts'
import type { Clause } from '../../syntax/index.ts'
import type { Span } from '../../text/index.ts'
import { finding } from './say.ts'

/** Leave from a check, as it is set in under what it concerns. */
export interface Leave {
  readonly rule: Slug
  readonly because: string
  readonly span: Span
}

interface Speaking {
  readonly clauses: readonly Clause[]
}

/** The leaves a statement gives, each with the reason that stands behind it; one without a reason allows nothing. */
export const leavesOf = ({ clauses }: Speaking): readonly Leave[] =>
  allowing(clauses).flatMap((one, index) => {
    const reason = clauses[index + 1]
    if (one.kind !== 'allow' || reason?.kind !== 'because') return []
    return [{ rule: one.check.text as Slug, because: reason.words.text, span: one.span }]
  })

/** A finding for each leave that a statement gives without a reason. */
export const reasonsMissing = ({ clauses }: Speaking): readonly Finding[] =>
  allowing(clauses).flatMap((one, index) =>
    one.kind === 'allow' && clauses[index + 1]?.kind !== 'because'
      ? [reasonMissing(one.check.text, one.span)]
      : [],
  )

/** Clauses among which something is allowed: most statements have none. */
const allowing = (clauses: readonly Clause[]): readonly Clause[] =>
  clauses.some(({ kind }) => kind === 'allow') ? clauses : []

export const reasonMissing = (rule: string, at: Span): Finding =>
  finding('allow/no-reason', at, `${rule} is allowed without a reason.`, {
    aboard: 'The next mate must know why it was let stand.',
    remedy: 'Say why: "because ...".',
  })
