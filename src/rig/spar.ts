import type { Kilograms, Metres, Point3, Radians } from '../measure/index.ts'
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
  /** What it is made of, as said: 'douglas fir', 'steel'. */
  readonly material: string | undefined
  /** Thickness of the walls of a hollow spar. */
  readonly walls: Metres | undefined
  readonly conjectural: boolean
  /** On whose word it is conjectured, where the text says. */
  readonly credited: string | undefined
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
  /** How sharp it goes, from fore and aft, where the text says. */
  readonly bracesTo: Radians | undefined
}

/**
 * A spar that lies along the ship, from its inner end to its outer end, as when the sail is set. A slung yard is
 * a lug's or a lateen's, its inner end the heel; 'spar' is any other, as a sprit or a bumkin.
 */
export interface Boom extends AnySpar {
  readonly kind: 'boom' | 'gaff' | 'bowsprit' | 'slung yard' | 'spar'
  readonly inner: Point3 | undefined
  readonly outer: Point3 | undefined
  /** Of a slung yard: where it crosses its mast, or its middle where the mast isn't given. */
  readonly slings: Point3 | undefined
  /** A gaff that hoists with its sail; false for a standing one and for a boom. */
  readonly hoists: boolean
  /** Height of the inner end when lowered; of a slung yard, of its slings. */
  readonly loweredHeight: Metres | undefined
  /** How far a running bowsprit is hauled in at each of its reefs. */
  readonly reefs: readonly Metres[]
}

/** Two light booms, one a side, that lie along a yard and are run out beyond its arms; told of the starboard one. */
export interface StuddingsailBoom extends AnySpar {
  readonly kind: 'studdingsail boom'
  /** Name of the yard. */
  readonly yard: string
  /** As run out. */
  readonly inner: Point3 | undefined
  readonly outer: Point3 | undefined
}

export type Spar = Yard | Boom | StuddingsailBoom
