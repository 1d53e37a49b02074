import type { Metres, Point3 } from '../measure/index.ts'
import type { Span } from '../text/index.ts'
import type { Evolution } from './evolution.ts'

export type SquareClass =
  | 'course'
  | 'topsail'
  | 'lower topsail'
  | 'upper topsail'
  | 'topgallant'
  | 'lower topgallant'
  | 'upper topgallant'
  | 'royal'
  | 'skysail'
  | 'square sail'
export type ForeAndAftClass =
  | 'headsail'
  | 'staysail'
  | 'gaff sail'
  | 'gaff topsail'
  | 'lugsail'
  | 'lateen sail'
  | 'fore-and-aft sail'

interface AnySail {
  /** The key: 'fore upper topsail'. */
  readonly name: string
  /** As printed: 'Fore upper topsail'. */
  readonly label: string
  readonly short: string | undefined
  /** Whether it is called in another language than the text's: then its label keeps its capitals. */
  readonly foreign: boolean
  /** Where its name had best stand on the sail plan; y is 0. Undefined where the text leaves it to the plan. */
  readonly nameAt: Point3 | undefined
  /** The mast it belongs to (its name, 'fore mast'), by yard, gaff, stay or topmast. */
  readonly mast: string | undefined
  /** The gear hung on it, or undefined. */
  readonly gear: string | undefined
  /** Corners and edges made fast without a line: 'tack to stay foot', 'clews to foot yard', 'luff to mast'. */
  readonly shackled: readonly Shackled[]
  readonly toSet: Evolution | undefined
  readonly toDouse: Evolution | undefined
  readonly reefs: readonly Reef[]
  /** What it is made of, where the text says. */
  readonly cloth: Cloth
  readonly conjectural: boolean
  /** On whose word it is conjectured, where the text says. */
  readonly credited: string | undefined
  readonly span: Span
}

export interface Shackled {
  readonly part: string
  /** By shackle, hoops, hanks or lacing. */
  readonly by: 'shackled' | 'hooped' | 'hanked' | 'laced'
  readonly to: string
}

/** Canvas as the text says it; each is undefined where it is silent. */
export interface Cloth {
  readonly number: number | undefined
  /** The list it is numbered by: 'navy flax'. Undefined for plain 'canvas'. */
  readonly list: string | undefined
  /** Width of the cloth off its bolt. */
  readonly width: Metres | undefined
}

/** A reef band: how far below the head (square) or above the foot (gaff) it lies. */
export interface Reef {
  readonly depth: Metres
  readonly from: 'head' | 'foot'
  /** How far out its cringles stand from the middle, where the text says. */
  readonly cringleOut: Metres | undefined
  readonly span: Span
}

/** A square sail, symmetrical about the centreline, lying in the plane x = `x` when the yards are square. */
export interface SquareSail extends AnySail {
  readonly kind: 'square'
  readonly class: SquareClass
  /** Name of the yard its head is bent to. */
  readonly yard: string
  /** Name of the yard its clews are sheeted or shackled to; a course has none. */
  readonly footYard: string | undefined
  /** Undefined, like head and foot, where the text gives no geometry. */
  readonly x: Metres | undefined
  readonly head: { readonly width: Metres; readonly height: Metres } | undefined
  readonly foot: { readonly width: Metres; readonly height: Metres } | undefined
  /** How far the middle of the foot rises above its clews. */
  readonly roach: Metres
}

/** A fore-and-aft sail, by its corners in the plane of the centreline (y is 0). */
export interface ForeAndAftSail extends AnySail {
  readonly kind: 'fore-and-aft'
  readonly class: ForeAndAftClass
  /** Names of the stay, or gaff and boom, or topmast, that it is set on. */
  readonly on: readonly string[]
  readonly sheetedTo: string | undefined
  /** Corners in order round the sail: tack, clew, head (triangle), or tack, clew, peak, throat; those the text gives. */
  readonly corners: readonly Corner[]
}

export interface Corner {
  readonly name: 'tack' | 'clew' | 'head' | 'peak' | 'throat'
  readonly at: Point3
}

/**
 * Two light sails, one a side, set outside a square sail: head to a yardarm, tack to the end of a boom. They hang in the
 * plane x = `x`; told of the starboard one.
 */
export interface Studdingsail extends AnySail {
  readonly kind: 'studdingsail'
  readonly class: 'studdingsail'
  /** Name of the yard whose arms its halyards lead through. */
  readonly yard: string | undefined
  /** Name of the boom its tack is hauled out to. */
  readonly on: readonly string[]
  readonly x: Metres | undefined
  /** In order round the sail: clew, tack, outer head, inner head; those the text gives. */
  readonly corners: readonly StuddingsailCorner[]
}

export interface StuddingsailCorner {
  readonly name: 'clew' | 'tack' | 'outer head' | 'inner head'
  readonly at: Point3
}

export type Sail = SquareSail | ForeAndAftSail | Studdingsail
