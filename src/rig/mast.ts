import type { Metres, Point3, Radians } from '../measure/index.ts'
import type { Span } from '../text/index.ts'

/** A mast: its sections from the deck up, each said by the height of its head. */
export interface Mast {
  /** 'fore mast' as a key; `word` is what its sails are named by: 'fore'. */
  readonly name: string
  readonly word: string
  readonly label: string
  /** Where it is stepped; y is 0. Undefined where the text gives no geometry. */
  readonly foot: Point3 | undefined
  /** Aft of the vertical, positive aft. */
  readonly rake: Radians
  /** How far before the mast's centre line the yards hang, along x, positive forward. */
  readonly yardsForward: Metres
  readonly sections: readonly MastSection[]
  /** Tops and crosstrees, from the deck up. */
  readonly platforms: readonly Platform[]
  /** False where the text says that it stands without shrouds, by its partners alone. */
  readonly hasShrouds: boolean
  readonly conjectural: boolean
  /** On whose word it is conjectured, where the text says. */
  readonly credited: string | undefined
  readonly span: Span
}

/** One spar of a mast, from its foot to its head along the rake. */
export interface MastSection {
  /** 'lower mast', 'topmast', 'topgallant mast', or 'pole'. */
  readonly name: string
  readonly foot: Point3 | undefined
  readonly head: Point3 | undefined
  readonly diameter: Metres | undefined
  /** Height of the overlap with the section below; zero for the lowest. */
  readonly doubling: Metres
  readonly span: Span
}

export interface Platform {
  readonly kind: 'top' | 'crosstrees'
  readonly width: Metres
  readonly height: Metres
  readonly span: Span
}

/** The point on a mast's centre line at height z, whatever section is there; it follows the rake. Undefined without geometry. */
export function onMast(mast: Mast, z: number): Point3 | undefined {
  if (!mast.foot) return undefined
  const x = mast.foot.x + (z - mast.foot.z) * Math.tan(mast.rake)
  return { x: x as Metres, y: 0 as Metres, z: z as Metres }
}
