export type { CalledLine, CalledPair, Reach } from './called.ts'
export { linesMeant } from './called.ts'
export type { Caution, CautionGroup } from './cautions.ts'
export {
  cautionAt,
  cautionBasis,
  cautionGroups,
  cautions,
  cautionsAboard,
  governingNote,
} from './cautions.ts'
export type { Evolutions } from './evolutions.ts'
export { evolve } from './evolutions.ts'
export type { Answer, Freed, Loan, Order, OrderPhase, OrderRow, PhaseHands, StationHands } from './order.ts'
export type { SailOrders } from './working-order.ts'
export { workingOrders } from './working-order.ts'
