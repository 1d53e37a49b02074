export { toPdf } from './to-pdf.ts'
