export { workbook } from './workbook.ts'
