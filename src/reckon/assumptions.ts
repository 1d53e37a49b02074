import { type MetresPerSecond, metresPerSecond, newtons, type Radians, radians } from '../measure/index.ts'
import type { Age, End } from './rope/index.ts'
import type { Friction, HandForce } from './tackle/index.ts'

/** What is taken for granted where a text says nothing: the caller may choose each. */
export interface Assumptions {
  /** The wind in which lines are hauled. */
  readonly wind: MetresPerSecond
  /** The winds that lines must bear: of light sails, of topsails and courses, of lower topsails and storm sails. */
  readonly strongWind: {
    readonly light: MetresPerSecond
    readonly working: MetresPerSecond
    readonly storm: MetresPerSecond
  }
  /** How far off the bow the true wind is for which yards are braced, and the share of its speed that she makes. */
  readonly offBow: Radians
  readonly made: number
  readonly friction: Friction
  readonly hands: HandForce
  /** What spars without a stated weight are made of. */
  readonly timber: string
  /** The list that canvas is numbered by. */
  readonly canvas: string
  readonly end: End
  readonly age: Age
}

/**
 * The winds: common practice, no source. Six points off the bow: Nicholls's Seamanship and Nautical Knowledge, p. 69;
 * three tenths of the wind's speed: common practice, no source. A tenth of the load a sheave: Nicholls's Seamanship and Nautical Knowledge,
 * p. 42. 225 N a hand, standing, the whole body pulling: Eastman Kodak, Ergonomic Design for People at Work, vol. 2, 1986.
 */
export const usual: Assumptions = {
  wind: metresPerSecond(8),
  strongWind: { light: metresPerSecond(14), working: metresPerSecond(18), storm: metresPerSecond(22) },
  offBow: radians((67.5 * Math.PI) / 180),
  made: 0.3,
  friction: { model: 'on the load', share: 0.1 },
  hands: { hand: newtons(225), loss: 0 },
  timber: 'pitch pine',
  canvas: 'cotton duck',
  end: 'spliced',
  age: 'new',
}
