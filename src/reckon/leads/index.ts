export { type LeadFigures, leadFigures, type Piece, tail } from './lead-figures.ts'
export type { Turn, Way } from './way.ts'
