export { jsonFindings } from './json.ts'
export { type Lines, linesOf } from './lines.ts'
export { type Emphasis, noEmphasis, oneLine, plainFindings, several, summary } from './plain.ts'
export { sarifFindings } from './sarif.ts'
