export type { Finding, Fix, Found, Related, Severity, Slug } from './finding.ts'
