export type { Finding, Fix, Found, Related, Severity, Slug } from './finding.ts'
export { type Mended, mended } from './fixes.ts'
export { counted, inFileOrder } from './order.ts'
