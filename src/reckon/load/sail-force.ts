import { type MetresPerSecond, type Newtons, newtons, type SquareMetres } from '../../measure/index.ts'
import type { Sail } from '../../rig/index.ts'
import type { Assumptions } from '../assumptions.ts'
import { workingSails } from '../sails/index.ts'
import { windPressure } from '../wind/index.ts'

/** How much more a sail pulls than the wind's pressure on its area: common practice, no source. */
const coefficient = 1.2

/** The force of the wind on a sail that draws. */
export const sailForce = (area: SquareMetres, wind: MetresPerSecond): Newtons =>
  newtons(windPressure(wind) * coefficient * area)

/** The wind that the lines of a sail must bear: light sails come in before it blows harder. */
export function strongWindOf(sail: Sail, { strongWind }: Assumptions): MetresPerSecond {
  if (/\bstorm\b/.test(sail.name) || sail.class === 'lower topsail') return strongWind.storm
  return workingSails.has(sail.class) ? strongWind.working : strongWind.light
}
