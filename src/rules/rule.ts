import type { Evolutions } from '../evolve/index.ts'
import type { Finding, Severity, Slug } from '../findings/index.ts'
import type { Figures } from '../reckon/index.ts'
import type { Rig } from '../rig/index.ts'

/** What a rule has before it: the rig as written, and what was reckoned and derived from it. */
export interface Ship {
  readonly rig: Rig
  readonly figures: Figures
  readonly evolutions: Evolutions
}

/** What a rule reports: a finding that doesn't yet carry the rule's name. */
export interface Draft extends Pick<Finding, 'at' | 'message' | 'aboard' | 'remedy' | 'fix' | 'explains'> {
  /** Where it differs from the rule's own; the rule's page says when. */
  readonly severity?: Severity
  readonly related?: Finding['related']
  /** Addresses and names of what it speaks of: the things an allowance may name. */
  readonly about: readonly string[]
  /** Addresses and names whose own fault would bring this one about: dropped where an earlier finding explains one. */
  readonly follows?: readonly string[]
}

/** One check a mate would make. */
export interface Rule {
  readonly slug: Slug
  readonly severity: Severity
  /** A want shows only in a whole vessel; what is wrongly there shows in a part as well. */
  readonly judges: 'vessels' | 'vessels and parts'
  readonly judge: (ship: Ship) => Iterable<Draft>
  /** What is told in place of its drafts, of which none follows from an earlier finding: many of one cause as one. */
  readonly together?: (drafts: readonly Draft[], ship: Ship) => readonly Draft[]
}
