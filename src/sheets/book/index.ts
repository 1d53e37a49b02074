export type { Book } from './book.ts'
export { stationHandbook } from './handbook.ts'
export { imposed } from './imposed.ts'
export { stationStem } from './station-stem.ts'
