import type { Kilograms, Metres, Point3 } from '../measure/index.ts'
import type { Span } from '../text/index.ts'

interface AnySpar {
  /** The key: 'fore upper topsail yard'. */
  readonly name: string
  readonly label: string
  /** Name of its mast, where it has one. */
  readonly mast: string | undefined
  readonly length: Metres | undefined
  readonly diameter: Metres | undefined
  readonly mass: Kilograms | undefined
  readonly conjectural: boolean
  readonly span: Span
}

/** A yard, by its middle: set (hoisted, or where it is fixed) and, if it hoists, lowered. Lies athwart. */
export interface Yard extends AnySpar {
  readonly kind: 'yard'
  /** Undefined where the text gives no geometry. */
  readonly middle: Point3 | undefined
  readonly hoists: boolean
  /** Height of its middle when lowered; equals the middle's when fixed. */
  readonly loweredHeight: Metres | undefined
}

/** A boom, gaff or bowsprit, from its inner end to its outer end, as when the sail is set. */
export interface Boom extends AnySpar {
  readonly kind: 'boom' | 'gaff' | 'bowsprit'
  readonly inner: Point3 | undefined
  readonly outer: Point3 | undefined
  /** A gaff that hoists with its sail; false for a standing one and for a boom. */
  readonly hoists: boolean
  /** Height of the inner end when lowered. */
  readonly loweredHeight: Metres | undefined
}

export type Spar = Yard | Boom
