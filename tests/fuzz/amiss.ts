import { existsSync } from 'node:fs'
import type { Finding } from '../../src/findings/index.ts'
import type { Source } from '../../src/text/index.ts'

const rules = new URL('../../src/rules/', import.meta.url)
const pages = new Map<string, boolean>()

function hasPage(rule: string): boolean {
  const known = pages.get(rule)
  if (known !== undefined) return known
  const found = existsSync(new URL(`${rule}.md`, rules))
  pages.set(rule, found)
  return found
}

/** What is amiss with a finding whatever the text was; undefined where nothing is. */
export function amiss(finding: Finding, sources: readonly Source[]): string | undefined {
  const spans = [
    finding.at,
    ...finding.related.map(({ at }) => at),
    ...(finding.fix?.edits ?? []).map(({ at }) => at),
  ]
  for (const { source, start, end } of spans) {
    const text = sources.find(({ name }) => name === source)?.text
    if (text === undefined) return `${finding.rule} points into ${source}, which was not read`
    if (!(start >= 0 && end >= start && end <= text.length))
      return `${finding.rule} points outside ${source}: ${start} to ${end} of ${text.length}`
  }
  const words = [finding.message, finding.aboard, finding.remedy].join(' ')
  if (finding.message.trim() === '') return `${finding.rule} says nothing`
  if (/\bundefined\b|\bNaN\b|\[object |\bInfinity\b/.test(words))
    return `${finding.rule} speaks as a machine: ${words}`
  if (!hasPage(finding.rule)) return `${finding.rule} has no page`
  return undefined
}
