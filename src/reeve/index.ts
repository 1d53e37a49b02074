export { reeve } from './reeve.ts'
export { tableText } from './table-text.ts'
export { type TableName, tableNames } from './tables.ts'
