export { storesTables } from './tables.ts'
