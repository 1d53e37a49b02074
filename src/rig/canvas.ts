import type { Span } from '../text/index.ts'

/** A working sail plan: what she carries under a name, as 'topsail breeze'. */
export interface Canvas {
  /** The key: 'topsail breeze'. */
  readonly name: string
  readonly label: string
  /** At least one, in the order of the rig's sails. */
  readonly sails: readonly Carried[]
  readonly span: Span
}

/** A sail by its key, and how many reefs are taken in it. */
export interface Carried {
  readonly sail: string
  readonly reefs: number
}
