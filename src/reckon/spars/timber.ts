import { type Figure, known, type Quantity, unknown } from '../../measure/index.ts'
import { nearest } from '../../text/index.ts'

export type KilogramsPerCubicMetre = Quantity<'kg/m3'>

const poundsPerCubicFoot = 0.45359237 / 0.3048 ** 3

/** Wood at 12 % of moisture from its specific gravity: USDA Wood Handbook, FPL-GTR-190, ch. 5, from memory. */
const seasoned = (specificGravity: number): number => 1.12 * specificGravity * 1000

/**
 * What spars are made of. Pitch pine, elm, teak and steel: Nicholls's Seamanship and Nautical Knowledge, p. 346; the
 * others by specific gravity, from memory.
 */
const densities: ReadonlyMap<string, number> = new Map([
  ['pitch pine', 40 * poundsPerCubicFoot],
  ['elm', 45 * poundsPerCubicFoot],
  ['teak', 50 * poundsPerCubicFoot],
  ['sitka spruce', seasoned(0.4)],
  ['douglas fir', seasoned(0.48)],
  ['white pine', seasoned(0.35)],
  ['red pine', seasoned(0.46)],
  ['longleaf pine', seasoned(0.59)],
  ['white oak', seasoned(0.68)],
  ['steel', 489 * poundsPerCubicFoot],
])

export const sparMaterials: readonly string[] = [...densities.keys()]

/** Density of what a spar is made of. */
export function densityOf(material: string): Figure<KilogramsPerCubicMetre> {
  const density = densities.get(material)
  if (density !== undefined) return known(density as KilogramsPerCubicMetre)
  const near = nearest(material, sparMaterials)
  return unknown(
    `The weight of "${material}" is not known.${near.length > 0 ? ` Nearest: ${near.join(', ')}.` : ''}`,
  )
}
