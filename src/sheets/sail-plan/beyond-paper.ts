import type { Finding } from '../../findings/index.ts'
import type { Rig } from '../../rig/index.ts'
import type { Span } from '../../text/index.ts'
import { beyondAnyShip, isSober } from './sober.ts'

/** A thing left off the plan because one of its measures is beyond any ship. */
export interface LeftOff {
  readonly label: string
  readonly span: Span
}

/** Masts, spars, stays and sails with a measure beyond any ship. */
export function beyondPaper({ masts, spars, standing, sails }: Rig): readonly LeftOff[] {
  return [...masts, ...spars, ...standing, ...sails].filter(thing => !isSoberThing(thing))
}

/** One finding for each thing left off. */
export const leftOffFindings = (things: readonly LeftOff[]): readonly Finding[] =>
  things.map(({ label, span }) => ({
    rule: 'sheet/beyond-paper',
    severity: 'warning',
    at: span,
    message: `${label} has a measure of ${beyondAnyShip} m or more, and is left off the sail plan.`,
    remedy: 'See whether a unit or a decimal point is wrong.',
    related: [],
  }))

/** Every number in the thing's own geometry is a ship's. Spans count letters, not metres. */
function isSoberThing(thing: object): boolean {
  return Object.entries(thing).every(([key, value]) => {
    if (key === 'span' || key === 'mass' || key === 'toSet' || key === 'toDouse') return true
    if (typeof value === 'number') return isSober(value)
    return typeof value === 'object' && value !== null ? isSoberThing(value) : true
  })
}
