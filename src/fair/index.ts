export { fair } from './fair.ts'
