import { type Figure, known, type Metres, metres, unknown } from '../measure/index.ts'
import type { Rig } from '../rig/index.ts'
import type { LeadFigures } from './leads/index.ts'

/**
 * Rope for all running rigging that is aloft, to cut; unknown as soon as one line's is, and then it says what the others
 * come to.
 */
export function runningRigging(rig: Rig, leads: ReadonlyMap<string, LeadFigures>): Figure<Metres> {
  const aloft = rig.lines.filter(line => line.lifted === undefined)
  const lengths = aloft.map(line => leads.get(line.address)?.length)
  const told = lengths.flatMap(length => (length?.known ? [length.value] : []))
  const sum = told.reduce<number>((total, length) => total + length, 0)
  const missing = lengths.length - told.length
  if (lengths.length === 0) return unknown('The rig has no lines.')
  if (missing === 0) return known(metres(sum))
  return unknown(
    `${missing} of ${lengths.length} lines have no length; the others come to ${Math.round(sum)} m.`,
  )
}
