import type { Finding, Severity } from '../findings/index.ts'
import type { Source } from '../text/index.ts'

const gravity: Record<Severity, number> = { error: 0, warning: 1, note: 2 }

/** Findings in the order of the texts, the entry first, and down each text; the graver first where two meet. */
export function inFileOrder(sources: readonly Source[], findings: readonly Finding[]): readonly Finding[] {
  const order = new Map(sources.map((source, index) => [source.name, index]))
  const sourceOf = ({ at }: Finding) => order.get(at.source) ?? sources.length
  return [...findings].sort(
    (a, b) =>
      sourceOf(a) - sourceOf(b) ||
      a.at.start - b.at.start ||
      gravity[a.severity] - gravity[b.severity] ||
      alphabetically(a.rule, b.rule) ||
      alphabetically(a.message, b.message),
  )
}

const alphabetically = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
