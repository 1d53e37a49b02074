import type { Finding } from '../findings/index.ts'
import type { Figures } from '../reckon/index.ts'
import type { Rig } from '../rig/index.ts'
import { allowed, type Judged } from './allow.ts'
import { inFileOrder } from './in-file-order.ts'
import { rules } from './list.ts'
import type { Draft, Rule, Ship } from './rule.ts'

/**
 * Judges a rig by every rule: findings in the order of the text, what the rig allows lowered to notes. Findings of
 * earlier stages, where they are handed in, are returned among them, and what only follows from one of them is
 * left out.
 */
export function judge(rig: Rig, figures: Figures, earlier: readonly Finding[] = []): readonly Finding[] {
  const explained = new Set(earlier.flatMap(finding => finding.explains ?? []))
  const judged = rules.flatMap(rule => judgedBy(rule, { rig, figures }, explained))
  const before = earlier.map(finding => ({ finding, about: finding.explains ?? [] }))
  return inFileOrder(rig.sources, allowed(rig, [...before, ...judged]))
}

/** One rule's findings, less those that follow from what is explained already; then it explains its own. */
function judgedBy(rule: Rule, ship: Ship, explained: Set<string>): readonly Judged[] {
  if (rule.judges === 'vessels' && !ship.rig.isVessel) return []
  const drafts = [...rule.judge(ship)].filter(draft => !draft.follows?.some(thing => explained.has(thing)))
  for (const thing of drafts.flatMap(draft => draft.explains ?? [])) explained.add(thing)
  return drafts.map(draft => ({ finding: findingOf(rule, draft), about: draft.about }))
}

function findingOf(rule: Rule, { about: _, follows: __, severity, related, ...told }: Draft): Finding {
  return { rule: rule.slug, severity: severity ?? rule.severity, related: related ?? [], ...told }
}
