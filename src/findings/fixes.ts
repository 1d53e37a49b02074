import type { Source, Span } from '../text/index.ts'
import type { Finding, Fix } from './finding.ts'

/** What the fixes of some findings make of their texts. */
export interface Mended {
  /** The texts that change, as they are then, in the order of `sources`. */
  readonly sources: readonly Source[]
  readonly applied: readonly Fix[]
  /** Fixes that would touch what another has changed: they are offered again when the text is read anew. */
  readonly left: readonly Fix[]
}

type Edit = Fix['edits'][number]

/**
 * Applies the fixes of findings to the texts given, each whole or not at all, the first found first. A fix that
 * reaches outside these texts is passed over.
 */
export function mended(sources: readonly Source[], findings: readonly Finding[]): Mended {
  const taken = new Map<string, Edit[]>(sources.map(({ name }) => [name, []]))
  const applied: Fix[] = []
  const left: Fix[] = []
  for (const fix of distinct(findings.flatMap(finding => finding.fix ?? []))) {
    if (!fix.edits.every(({ at }) => taken.has(at.source))) continue
    if (fix.edits.every(edit => isClear(taken.get(edit.at.source) ?? [], edit.at))) {
      for (const edit of fix.edits) put(taken.get(edit.at.source) ?? [], edit)
      applied.push(fix)
    } else left.push(fix)
  }
  const changed = sources.flatMap(source => {
    const edits = taken.get(source.name) ?? []
    return edits.length > 0 ? [{ ...source, text: edited(source.text, edits) }] : []
  })
  return { sources: changed, applied, left }
}

/** One fix may be offered by several findings: a name misspelt in a gear is unknown on every sail. */
function distinct(fixes: readonly Fix[]): readonly Fix[] {
  const keyOf = ({ edits }: Fix) =>
    JSON.stringify(edits.map(({ at, text }) => [at.source, at.start, at.end, text]))
  return [...new Map(fixes.toReversed().map(fix => [keyOf(fix), fix])).values()].toReversed()
}

function isClear(edits: readonly Edit[], at: Span): boolean {
  const next = placeFor(edits, at.start)
  const before = edits[next - 1]
  const after = edits[next]
  return (!before || !meet(before.at, at)) && (!after || !meet(after.at, at))
}

/** Two stretches that share a letter, or begin at one place, so that it would matter which is changed first. */
const meet = (a: Span, b: Span) => a.start === b.start || (a.start < b.end && b.start < a.end)

function put(edits: Edit[], edit: Edit): void {
  edits.splice(placeFor(edits, edit.at.start), 0, edit)
}

/** Where in a list in the order of the text an edit that begins here belongs. */
function placeFor(edits: readonly Edit[], start: number): number {
  let low = 0
  let high = edits.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((edits[middle]?.at.start ?? 0) < start) low = middle + 1
    else high = middle
  }
  return low
}

/** A text with edits made that are in its order and share nothing. */
function edited(text: string, edits: readonly Edit[]): string {
  const ends = [0, ...edits.map(({ at }) => at.end)]
  const pieces = edits.map(({ at, text: words }, index) => text.slice(ends[index], at.start) + words)
  return pieces.join('') + text.slice(ends.at(-1))
}
