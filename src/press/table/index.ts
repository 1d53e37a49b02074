export { plainTables } from './plain.ts'
