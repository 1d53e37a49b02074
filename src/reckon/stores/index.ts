export { coilOf120Fathoms } from './cordage.ts'
export { type Cutting, fewestCoils, type Solve } from './cutting.ts'
export { solve } from './solver.ts'
export { type Stores, storesOf } from './stores.ts'
