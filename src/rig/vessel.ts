import type { Kilograms, Metres, Point3, Radians } from '../measure/index.ts'
import type { Span } from '../text/index.ts'

/** The vessel as a whole: what stands in the title block. Facts the text leaves out are undefined. */
export interface Vessel {
  /** 'Harrow Tansy'; 'Unnamed vessel' where the text gives none. */
  readonly name: string
  /** 'barque', 'topsail schooner', as written. */
  readonly rig: string | undefined
  readonly waterline: Metres | undefined
  readonly betweenPerpendiculars: Metres | undefined
  readonly overSpars: Metres | undefined
  readonly beam: Metres | undefined
  readonly draught: Metres | undefined
  readonly displacement: Kilograms | undefined
  /** Centre of lateral resistance; y is 0. */
  readonly lateralCentre: Point3 | undefined
  readonly metacentricHeight: Metres | undefined
  readonly stability: Stability
  /** Heights of the named decks above the waterline, in the order of the text. */
  readonly decks: readonly { readonly name: string; readonly height: Metres }[]
  readonly handsInAll: number | undefined
  readonly handsInWatch: number | undefined
  /** Units the papers speak: ['m', 'mm'] or ['ft', 'in']. */
  readonly units: readonly string[]
  readonly revision: Revision | undefined
  readonly rights: string | undefined
  readonly credits: readonly string[]
  readonly span: Span
}

/** What her stability papers say; each is undefined, and the arms are empty, where the text is silent. */
export interface Stability {
  /** Righting arms in the order of the text. */
  readonly rightingArms: readonly { readonly angle: Radians; readonly arm: Metres }[]
  /** The heel that puts the deck's edge under, and the one that lets water below. */
  readonly deckEdge: Radians | undefined
  readonly downflooding: Radians | undefined
  readonly waters: 'exposed' | 'partially protected' | 'protected' | undefined
}

/** Which edition of the rig the papers show. The date is the text's, never the clock's. */
export interface Revision {
  readonly mark: string
  readonly year: number
  readonly month: number
  readonly day: number
}
