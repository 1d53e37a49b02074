import type { Metres, Point3 } from '../measure/index.ts'
import type { Span } from '../text/index.ts'

/** A stay, from aloft (`from`) to below (`to`), on the centreline. It may carry a sail. */
export interface Stay {
  readonly kind: 'stay'
  readonly name: string
  readonly label: string
  readonly from: Point3 | undefined
  readonly to: Point3 | undefined
  readonly diameter: Metres | undefined
  readonly conjectural: boolean
  /** On whose word it is conjectured, where the text says. */
  readonly credited: string | undefined
  readonly span: Span
}

/** Shrouds or backstays: a bank of parts on each side, the foremost from `from` to `to` (starboard), the rest `apart` aft. */
export interface Shrouds {
  readonly kind: 'shrouds' | 'backstays'
  readonly name: string
  readonly label: string
  readonly from: Point3 | undefined
  readonly to: Point3 | undefined
  readonly count: number
  readonly apart: Metres | undefined
  readonly diameter: Metres | undefined
  readonly conjectural: boolean
  /** On whose word it is conjectured, where the text says. */
  readonly credited: string | undefined
  readonly span: Span
}

export type StandingRigging = Stay | Shrouds
