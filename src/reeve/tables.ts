/** The tables of a vessel, by their files' names without ending. Leads and deck may be missing. */
export const tableNames = ['hull', 'spars', 'sails', 'rails', 'lines', 'leads', 'deck'] as const
export type TableName = (typeof tableNames)[number]

/** A vessel as her tables have her. Metres; x aft of the forward perpendicular, y to starboard, z above the waterline. */
export interface Tables {
  readonly hull: Hull
  readonly spars: readonly TableSpar[]
  readonly sails: readonly TableSail[]
  readonly rails: readonly TableRail[]
  readonly lines: readonly TableLine[]
  readonly deck: readonly TableThing[]
}

/** What the hull's table says: words and numbers by their keys, in metres, tonnes and heads. */
export interface Hull {
  readonly words: ReadonlyMap<string, string>
  readonly numbers: ReadonlyMap<string, number>
}

export type Side = 'port' | 'starboard'

export type SpaceXZ = readonly [x: number, z: number]
export type Space = readonly [x: number, y: number, z: number]

export interface TableSpar {
  readonly name: string
  /** What the tables call it, where the language has a name of its own for it: the bowsprit. */
  readonly called: string | undefined
  readonly kind: string
  readonly mast: string
  readonly from: SpaceXZ
  readonly to: SpaceXZ
  readonly length: number | undefined
  readonly millimetres: number | undefined
  readonly hoists: boolean
  readonly lowered: number | undefined
  readonly mass: number | undefined
  readonly note: string
}

export interface TableSail {
  readonly name: string
  readonly square: boolean
  readonly class: string
  readonly on: string
  readonly footOn: string
  readonly head: { readonly width: number; readonly height: number } | undefined
  readonly foot: { readonly width: number; readonly height: number } | undefined
  readonly roach: number
  readonly corners: readonly { readonly name: string; readonly at: SpaceXZ }[]
  readonly order: number
}

export interface TableRail {
  readonly code: string
  readonly kind: string
  readonly side: Side | undefined
  readonly first: Space
  readonly last: Space
  readonly pins: number
  readonly note: string
}

export interface TableLine {
  readonly id: string
  /** The name without its side: 'fore course tack'. */
  readonly words: string
  /** Of one of a pair. */
  readonly side: Side | undefined
  readonly kind: string
  readonly actsOn: string
  /** Where it is made fast; undefined where that is left to be given. */
  readonly pin: { readonly rail: string; readonly number: number } | undefined
  /** Empty where the table says none. */
  readonly purchase: readonly string[]
  readonly millimetres: number | undefined
  readonly material: string
  readonly travel: number | undefined
  readonly hands: number | undefined
  /** Ids of the lines that are eased; undefined where the table has no such column. */
  readonly against: readonly string[] | undefined
  /** From the pin outward; empty where the leads say nothing of it. */
  readonly lead: readonly { readonly at: Space; readonly what: string; readonly parts: number }[]
}

export interface TableThing {
  readonly name: string
  readonly kind: string
  readonly x: readonly [number, number]
  readonly y: readonly [number, number]
  readonly top: number
}
