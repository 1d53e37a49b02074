export { apparentWind, type ShipWind, trueWind } from './apparent.ts'
export { beaufort, type Force, forceOf, knot, middleOf } from './beaufort.ts'
export { landExponent, roughnessUnder, seaExponent, seaRoughness, windAt, windByLog } from './height.ts'
export { windPressure } from './pressure.ts'
