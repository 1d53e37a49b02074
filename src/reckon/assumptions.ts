import { type MetresPerSecond, metresPerSecond, type Newtons, newtons } from '../measure/index.ts'

/** What is taken for granted where a text says nothing: the caller may choose each. */
export interface Assumptions {
  /** The wind over the sails that loads are reckoned for. */
  readonly wind: MetresPerSecond
  /** How much of the load each sheave adds to the pull. */
  readonly friction: number
  /** The steady pull of one hand. */
  readonly hand: Newtons
}

/**
 * A fresh breeze; a tenth of the load a sheave (Nicholls's Seamanship and Nautical Knowledge, p. 42); 225 N a hand,
 * standing, the whole body pulling (Eastman Kodak, Ergonomic Design for People at Work, vol. 2, 1986).
 */
export const usual: Assumptions = {
  wind: metresPerSecond(10),
  friction: 0.1,
  hand: newtons(225),
}
