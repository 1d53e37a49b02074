import type { Source } from '../text/index.ts'
import type { Finding } from './finding.ts'

/**
 * Findings in the order of the texts and of the places in them; at one place, by rule and message. What several
 * papers find alike is kept once.
 */
export function inFileOrder(findings: readonly Finding[], sources: readonly Source[]): readonly Finding[] {
  const rank = new Map(sources.map((source, index) => [source.name, index]))
  const place = ({ at }: Finding) => rank.get(at.source) ?? sources.length
  const compare = (a: Finding, b: Finding) =>
    place(a) - place(b) ||
    compareWords(a.at.source, b.at.source) ||
    a.at.start - b.at.start ||
    a.at.end - b.at.end ||
    compareWords(a.rule, b.rule) ||
    compareWords(a.message, b.message)
  return findings.toSorted(compare).filter((one, at, sorted) => {
    const before = sorted[at - 1]
    return !before || compare(before, one) !== 0
  })
}

const compareWords = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

/** How many findings of each severity there are. */
export function counted(findings: readonly Finding[]): {
  readonly errors: number
  readonly warnings: number
  readonly notes: number
} {
  const of = (severity: Finding['severity']) => findings.filter(one => one.severity === severity).length
  return { errors: of('error'), warnings: of('warning'), notes: of('note') }
}
