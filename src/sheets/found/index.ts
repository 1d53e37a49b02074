export { foundRecord } from './record.ts'
export { foundTables } from './tables.ts'
