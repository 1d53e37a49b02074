export { proportionsTables, ropeTable, type TackleByHand, tackleTable } from './by-hand.ts'
export { type ReckoningRecord, reckoningRecord } from './record.ts'
export { reckoningTables } from './tables.ts'
