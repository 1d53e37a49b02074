import type { Figure } from '../measure/index.ts'
import type { Act, Side } from '../rig/index.ts'
import type { CalledLine, CalledPair } from './called.ts'

/** How one sail is set, or got in, with what the text leaves unsaid reckoned from the counterparts. */
export interface Order {
  readonly kind: 'set' | 'douse'
  /** The sail's name. */
  readonly sail: string
  /** One sentence of the state it begins from. */
  readonly before: string | undefined
  readonly phases: readonly OrderPhase[]
  /** What to do if it jams. */
  readonly jams: string | undefined
}

/** One phase: everything in it is done together, and the next begins when `until` is met. */
export interface OrderPhase {
  /** From 1. */
  readonly number: number
  /** The order as spoken. */
  readonly order: string
  readonly answer: string | undefined
  readonly report: string | undefined
  readonly until: string | undefined
  /** What the text says to mind, beside the numbered cautions. */
  readonly minds: readonly string[]
  /** Numbers of the cautions: the text's, or, where its order names none at all, those its acts call for. */
  readonly cautions: readonly number[]
  readonly aloft: { readonly hands: number | undefined; readonly work: string } | undefined
  readonly haul: readonly OrderRow[]
  /** Lines eased or let go: what the text says, then what follows from the hauls. */
  readonly ease: readonly OrderRow[]
  readonly hold: readonly OrderRow[]
  readonly tend: readonly OrderRow[]
  readonly standBy: readonly OrderRow[]
  /** Counterparts of this phase's hauls that an earlier phase has freed. */
  readonly freed: readonly Freed[]
  /** What answers the hauls where no line does: 'the sail's own pull'. */
  readonly answeredBy: readonly string[]
  /** For every line hauled and every counterpart of it, how it is answered. */
  readonly answers: readonly Answer[]
  readonly hands: PhaseHands
}

/** One line or pair in one phase: what is done with it, who does it, and with how many. */
export interface OrderRow extends CalledPair {
  readonly act: Act
  /** Worked after the rows before it on its side of the page. */
  readonly after: boolean
  /** 'when running': only then. */
  readonly when: string | undefined
  /** Whether the text says it, or it follows from a haul whose counterpart the text is silent about. */
  readonly source: 'text' | 'counterpart'
  /** Addresses of the lines meant, by the side the wind comes from; of a named line, both it may be. */
  readonly lines: Readonly<Record<Side, readonly string[]>>
  /** How many lines are worked at once: 2 for both of a pair. */
  readonly count: number
  /** Hands on all the lines of the row together. */
  readonly hands: Figure<number>
  /** Names of the stations that work it, port's first; empty where none does. */
  readonly stations: readonly string[]
}

/** A counterpart that was freed before the haul that needs it. */
export interface Freed extends CalledPair {
  readonly act: 'ease' | 'let go'
  /** The phase it was freed in. */
  readonly phase: number
  /** Held again since: the halyard that was eased and is now fast. */
  readonly belayed: boolean
}

/** How one hauled line is answered by one of its counterparts. */
export interface Answer {
  readonly hauled: CalledLine
  readonly counterpart: CalledLine
  readonly how: /** The text works it in this very phase. */
    | { readonly kind: 'here'; readonly act: Act }
    /** It was eased or let go in an earlier phase. */
    | { readonly kind: 'freed'; readonly phase: number }
    /** The text is silent: it is added to the ease side. */
    | { readonly kind: 'follows' }
}

/** The hands a phase takes at once, against those the vessel has. */
export interface PhaseHands {
  /** On the lines hauled. */
  readonly hauling: Figure<number>
  /** On lines eased or tended: one hand to a line (common practice, no source). */
  readonly easing: number
  readonly aloft: number
  readonly stations: readonly StationHands[]
}

/** What a phase asks of one station, and who makes up its number. */
export interface StationHands {
  readonly station: string
  readonly hauling: Figure<number>
  readonly easing: number
  /** Its hands with all hands called, and in one watch; undefined where the text gives none. */
  readonly inAll: number | undefined
  readonly inWatch: number | undefined
  /** Hands that come from other stations when all are called. */
  readonly loans: readonly Loan[]
  /** Hands still wanting after that. */
  readonly short: number
}

/** Hands lent by one station to another for a phase. */
export interface Loan {
  readonly from: string
  readonly hands: number
}
