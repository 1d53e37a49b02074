export { csvTable } from './csv.ts'
export { jsonTables } from './json.ts'
export { plainTables } from './plain.ts'
