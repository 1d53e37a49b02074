/** Long tons on the square foot, in kilograms on the square metre; a thousand of them stand in the printed constants. */
const longTon = 1016.0469088
const foot = 0.3048

/** One unit of the printed numerals X, Y and Z, in kilograms on the square metre: 1 long ton/ft2 over a thousand. */
export const numeral = longTon / foot ** 2 / 1000

/** How far from shelter she sails. */
export type Waters = 'exposed' | 'partially protected' | 'protected'

/** 46 CFR 171.055(d): what the three numerals must reach, in long tons on the square foot. */
export const numerals: Readonly<
  Record<Waters, { readonly x: number; readonly y: number; readonly z: number }>
> = {
  exposed: { x: 1.5, y: 1.7, z: 1.9 },
  'partially protected': { x: 1, y: 1.1, z: 1.25 },
  protected: { x: 1, y: 1.1, z: 1.25 },
}

/** 46 CFR 171.055(c): how far the righting arm must stay positive, in degrees. */
export const leastRange: Readonly<Record<Waters, number>> = {
  exposed: 90,
  'partially protected': 70,
  protected: 70,
}

/** 46 CFR 170.170(a): the first term of the wind's pressure, in long tons on the square foot; the second is (L / 14,200)^2, L in feet. */
export const weatherTerm: Readonly<Record<Waters, number>> = {
  exposed: 0.005,
  'partially protected': 0.0033,
  protected: 0.0025,
}

/** 46 CFR 171.057: what a sailing catamaran's numeral must reach, in pounds on the square foot. */
export const catamaranNumeral: Readonly<Record<Waters, number>> = {
  exposed: 1.5,
  'partially protected': 1.5,
  protected: 1,
}

/** 46 CFR 178.330: the wind of a small vessel under sail, in pounds on the square foot, in protected and partially protected waters. */
export const proofPressure = 1

export { foot, longTon }
