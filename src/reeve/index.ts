export { reeve } from './reeve.ts'
export { type TableName, tableNames } from './tables.ts'
