import { type Metres, type MetresPerSecond, metresPerSecond } from '../../measure/index.ts'

/** Winds are told for this height, in metres. */
const reference = 10

/** Over open sea, 0.11 to 0.13: Deacon, Sheppard and Webb, Australian Journal of Physics 9, 1956, as an encyclopaedia cites them. */
export const seaExponent = 0.11
/** The seventh root, usual over land: AMS Glossary, "power-law profile". */
export const landExponent = 1 / 7
/** Roughness of the open sea, in metres: Davenport and Wieringa's classes (from memory). */
export const seaRoughness = 0.0002

/** Wind at a height above the sea, from that at 10 m, by the power law. */
export const windAt = (at10: MetresPerSecond, height: Metres, exponent = seaExponent): MetresPerSecond =>
  metresPerSecond(height > 0 ? at10 * (height / reference) ** exponent : 0)

/** The same by the logarithmic law; nothing below the roughness itself. */
export const windByLog = (at10: MetresPerSecond, height: Metres, roughness = seaRoughness): MetresPerSecond =>
  metresPerSecond(
    height > roughness ? (at10 * Math.log(height / roughness)) / Math.log(reference / roughness) : 0,
  )

/**
 * Roughness of the sea under a wind, in metres: Charnock's law with 0.0144 and von Karman's 0.41, and the drag of a
 * neutral wind at 10 m, (0.75 + 0.067 V) / 1000 between 4 and 21 m/s (J. R. Garratt, Monthly Weather Review 105, 1977;
 * author and year from memory).
 */
export function roughnessUnder(at10: MetresPerSecond): Metres {
  const friction = at10 * Math.sqrt((0.75 + 0.067 * at10) / 1000)
  return ((0.0144 * friction ** 2) / 9.80665) as Metres
}
