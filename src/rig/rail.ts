import type { Metres, Point3 } from '../measure/index.ts'
import type { Span } from '../text/index.ts'

export type Side = 'port' | 'starboard'

/** Which way a rail runs, and how it is faced. */
export type RailLie = 'port' | 'starboard' | 'athwart' | 'centre' | 'round'

/**
 * One rail, rack, beam, band, kevel or cleat on one side, with its places. A rail said "port and starboard"
 * in the text is two of these.
 */
export interface Rail {
  /** 'FR-P': the mark, with the side where the text mirrors it. Unique. Used in addresses. */
  readonly code: string
  /** 'FR': the mark as written; equal for the two of a mirrored rail. */
  readonly mark: string
  /** The words without side: 'fore rail'. */
  readonly name: string
  /** As printed, without side: 'Fore rail'. */
  readonly label: string
  /** 'pin rail', 'fife rail', 'bowsprit rack', 'kevel', 'cleat', 'shroud cleat', 'spider band', 'bitts'. */
  readonly kind: string
  readonly lie: RailLie
  /** True for one of two that mirror. */
  readonly mirrored: boolean
  /** Its first and last place; undefined where the text gives no geometry. */
  readonly first: Point3 | undefined
  readonly last: Point3 | undefined
  readonly places: readonly Place[]
  /** Name of the station that works it, or undefined. */
  readonly station: string | undefined
  readonly span: Span
}

/** One belaying place of a rail: a pin, or the rail itself where it is a kevel or a cleat. */
export interface Place {
  /** 'pin.FR-P.21', 'pin.FR-P.4a'. */
  readonly address: string
  /** 'FR-P'. */
  readonly rail: string
  /** How many-eth place it is: from 1, from forward, from port on an athwart rail, by starboard round a band. */
  readonly number: number
  /** What is painted beside it and called: '4', or '4a' for a pin put in after pin 4. */
  readonly pin: string
  readonly at: Point3 | undefined
  readonly side: Side | 'centre'
  /** Addresses of the lines belayed here, in the order of the text. */
  readonly lines: readonly string[]
  /** True where the text shares it on purpose. */
  readonly shared: boolean
  /** True where the text keeps it free. */
  readonly keptFree: boolean
  /** Where the text says what sits here, if it does. */
  readonly span: Span | undefined
}

/** A place as a line knows it. */
export interface BelayingPoint {
  readonly rail: string
  readonly number: number
  readonly pin: string
  readonly side: Side | 'centre'
  readonly at: Point3 | undefined
}

/** Pitch of a rail: the distance between neighbouring pins, in metres; undefined with fewer than two. */
export function pitch(rail: Rail): Metres | undefined {
  const [a, b] = rail.places
  if (!a?.at || !b?.at) return undefined
  return Math.hypot(b.at.x - a.at.x, b.at.y - a.at.y, b.at.z - a.at.z) as Metres
}
