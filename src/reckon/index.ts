export { type Assumptions, usual } from './assumptions.ts'
export type { BracedYard, MastBraced } from './brace/index.ts'
export { braceLimit, sharpestEver, windAloft } from './brace/index.ts'
export type { Figures, UnderCanvas } from './figures.ts'
export { reckon, underCanvas } from './figures.ts'
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
export { lowestWithin, tail } from './leads/index.ts'
export { type LineLoad, type LoadFigures, leastSafety, type SailLoad } from './load/index.ts'
export {
  byRule,
  knowsMaterial,
  materials,
  rulesOfThumb,
  shareLeft,
  strengthOf,
  thicknessFor,
} from './rope/index.ts'
export { runningRigging } from './running-rigging.ts'
export type { Balance, Lead, SailFigures } from './sails/index.ts'
export {
  balanceOf,
  canvasNames,
  canvasNumber,
  edgesCross,
  groupsOf,
  knowsCanvas,
  leadRanges,
  listOf,
  missingCorners,
  sailFigures,
} from './sails/index.ts'
export {
  lengthsBy,
  mastsBySevenths,
  proportions,
  sparLength,
  sparMaterials,
  thicknessBy,
} from './spars/index.ts'
export type { Criterion, StabilityFigures, Waters } from './stability/index.ts'
export { catamaran, catamaranNumeral, notChecked, proofMoment } from './stability/index.ts'
export { coilOf120Fathoms, type Stores, solve, storesOf } from './stores/index.ts'
export {
  capstan,
  handsAt,
  handsFor,
  heldByTurns,
  holdingRatio,
  inLargeParty,
  joined,
  pullRatio,
  purchaseOfBlocks,
  type Tackle,
  tackleOf,
} from './tackle/index.ts'
export { forceOf, knot, middleOf, roughnessUnder, windAt, windByLog, windPressure } from './wind/index.ts'
