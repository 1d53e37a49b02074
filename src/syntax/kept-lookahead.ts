import type { Lookahead } from './lookahead.ts'

/** What the analysis of the grammar tells. The build puts it here; run from the sources there is none, and it is made. */
export const keptLookahead: Lookahead | undefined = undefined
