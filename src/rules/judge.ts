import type { Finding } from '../findings/index.ts'
import { unreadPage } from '../syntax/index.ts'
import { allowed, type Judged } from './allow.ts'
import { rules } from './list.ts'
import type { Draft, Rule, Ship } from './rule.ts'
import { withoutUnread } from './unread.ts'

/**
 * Judges a ship by every rule. Returns the findings of the stages before with its own: what only follows from one
 * of them is left out, and what the rig allows is lowered to a note.
 */
export function judge(ship: Ship, before: readonly Finding[]): readonly Finding[] {
  const explained = new Set(before.flatMap(finding => finding.explains ?? []))
  const judged = rules.flatMap(rule => judgedBy(rule, ship, explained))
  const found = withoutUnread(before).map(finding => ({ finding, about: finding.explains ?? [] }))
  return allowed(ship.rig, [...found, ...judged])
}

/** One rule's findings, less those that follow from what is explained already; then it explains its own. */
function judgedBy(rule: Rule, ship: Ship, explained: Set<string>): readonly Judged[] {
  if (rule.judges === 'vessels' && (!ship.rig.isVessel || explained.has(unreadPage))) return []
  const own = [...rule.judge(ship)].filter(draft => !draft.follows?.some(thing => explained.has(thing)))
  const drafts = rule.together?.(own, ship) ?? own
  for (const thing of drafts.flatMap(draft => draft.explains ?? [])) explained.add(thing)
  return drafts.map(draft => ({ finding: findingOf(rule, draft), about: draft.about }))
}

function findingOf(rule: Rule, { about: _, follows: __, severity, related, ...told }: Draft): Finding {
  return { rule: rule.slug, severity: severity ?? rule.severity, related: related ?? [], ...told }
}
