export type { Finding, Fix, Found, Related, Severity, Slug } from './finding.ts'
export { counted, inFileOrder } from './order.ts'
