export { type Assumptions, usual } from './assumptions.ts'
export type { Figures } from './figures.ts'
export { reckon } from './figures.ts'
export type {
  Chafe,
  Crossing,
  Fouls,
  LeadFigures,
  OverDeck,
  Piece,
  ThroughMast,
  Turn,
  Way,
} from './leads/index.ts'
export { tail } from './leads/index.ts'
export { type LineLoad, type LoadFigures, leastSafety, type SailLoad } from './load/index.ts'
export type { Balance, Lead, SailFigures } from './sails/index.ts'
export { balanceOf, edgesCross, missingCorners, sailFigures } from './sails/index.ts'
