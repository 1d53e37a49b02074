export type { Figures } from './figures.ts'
export { reckon } from './figures.ts'
export type { Balance, Lead, SailFigures } from './sails/index.ts'
export { balanceOf, missingCorners, sailFigures } from './sails/index.ts'
