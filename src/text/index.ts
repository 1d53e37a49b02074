export type { LineColumn, Source, Span } from './source.ts'
export { lineColumn, lineStarts, spanning } from './source.ts'
export { nearest } from './nearest.ts'
