import type { Page } from '../../syntax/index.ts'
import { clause } from './clauses.ts'
import type { Hung } from './hung.ts'
import type { LineNames } from './line-names.ts'
import { linesCalled } from './lines-called.ts'
import type { Say } from './say.ts'

/** Why each line that is lifted is lifted, by pair key: it is still declared, but made fast nowhere. */
export function buildLifted(
  pages: readonly Page[],
  hung: readonly Hung[],
  names: LineNames,
  say: Say,
): ReadonlyMap<string, string> {
  if (!pages.some(({ kind }) => kind === 'lifted')) return new Map()
  const ofSail = new Map<string, string[]>()
  for (const { hanging, pairKey } of hung) {
    if (!hanging) continue
    const own = ofSail.get(hanging.host.name)
    if (own) own.push(pairKey)
    else ofSail.set(hanging.host.name, [pairKey])
  }
  const lifted = new Map<string, string>()
  for (const page of pages) {
    if (page.kind !== 'lifted') continue
    const because = clause(page, 'because')?.words.text ?? 'she is laid up'
    for (const entry of page.block) {
      for (const pairKey of linesCalled(entry, names, say, ofSail)) lifted.set(pairKey, because)
    }
  }
  return lifted
}
