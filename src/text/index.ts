export { decode, type Unreadable } from './decode.ts'
export { clearlyNearest, nearest, surelyMeant } from './nearest.ts'
export type { LineColumn, Source, Span } from './source.ts'
export { lineColumn, lineStarts, spanning } from './source.ts'
