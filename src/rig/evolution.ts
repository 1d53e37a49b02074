import type { Span } from '../text/index.ts'

export type Act = 'haul' | 'ease' | 'let go' | 'hold' | 'tend' | 'stand by'

/** How a sail is set, or got in: phase by phase, in weather and lee, as the gear says and the sail alters. */
export interface Evolution {
  readonly kind: 'set' | 'douse'
  /** One sentence of the state it begins from, or undefined: 'The lower topsail is set.' */
  readonly before: string | undefined
  readonly phases: readonly Phase[]
  /** What to do if it jams, or undefined. */
  readonly jams: string | undefined
  readonly span: Span
}

/** One phase: every line in it is worked together; the next begins when `until` is met. */
export interface Phase {
  /** The order as spoken, without quotation marks: 'Lower away. Haul down.' */
  readonly order: string
  readonly answer: string | undefined
  readonly report: string | undefined
  readonly acts: readonly PhaseAct[]
  readonly until: string | undefined
  readonly minds: readonly string[]
  /** Numbers of the fourteen cautions. */
  readonly cautions: readonly number[]
  readonly aloft: { readonly hands: number | undefined; readonly work: string } | undefined
  readonly span: Span
}

/** What an order is called by where something is let stand of it: it may be the order of many sails. */
export const phaseKey = ({ span }: Pick<Phase, 'span'>): string => `order at ${span.source} ${span.start}`

/** One act on lines, in the order they are worked. */
export interface PhaseAct {
  readonly act: Act
  readonly lines: readonly WorkedLine[]
  /** 'when running': only then. */
  readonly when: string | undefined
}

/**
 * Lines of one pair-name, and which of them: the weather one, the lee one, or all there are. 'named' is the side
 * that the order names ('trim the yard': the brace named), 'other' the one across from it.
 */
export interface WorkedLine {
  /** `Line.pairKey` of lines in the rig; at least one line has it. */
  readonly pairKey: string
  readonly reach: 'weather' | 'lee' | 'all' | 'named' | 'other'
  /** True where it is worked after the ones before it ('haul lee buntline then weather buntline'). */
  readonly then: boolean
}
