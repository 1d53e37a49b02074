/** The tables of a vessel, by their files' names without ending. Leads and deck may be missing. */
export const tableNames = ['hull', 'spars', 'sails', 'rails', 'lines', 'leads', 'deck'] as const
export type TableName = (typeof tableNames)[number]

/** A vessel as her tables have her. Metres; x aft of the forward perpendicular, y to starboard, z above the waterline. */
export interface Tables {
  readonly hull: ReadonlyMap<string, { readonly value: string; readonly number: number }>
  readonly spars: readonly TableSpar[]
  readonly sails: readonly TableSail[]
  readonly rails: readonly TableRail[]
  readonly lines: readonly TableLine[]
  readonly deck: readonly TableThing[]
}

export type SpaceXZ = readonly [x: number, z: number]
export type Space = readonly [x: number, y: number, z: number]

export interface TableSpar {
  readonly name: string
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
  readonly side: string
  readonly first: Space
  readonly last: Space
  readonly pins: number
  readonly note: string
}

export interface TableLine {
  readonly id: string
  /** The name without its side: 'fore course tack'. */
  readonly words: string
  readonly side: 'port' | 'starboard' | undefined
  readonly kind: string
  readonly actsOn: string
  readonly rail: string
  readonly pin: number
  readonly purchase: readonly string[]
  readonly millimetres: number
  readonly material: string
  readonly travel: number | undefined
  readonly hands: number | undefined
  /** Ids of the lines that are eased. */
  readonly against: readonly string[]
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
