/**
 * A number that carries its unit in its type. Everything inside the program is SI: metres, kilograms,
 * radians, newtons. The units a rigger writes and reads live in `units.ts` and `show.ts` only.
 */
declare const unit: unique symbol
export type Quantity<U extends string> = number & { readonly [unit]: U }

export type Metres = Quantity<'m'>
export type SquareMetres = Quantity<'m2'>
export type Kilograms = Quantity<'kg'>
export type Radians = Quantity<'rad'>
export type Newtons = Quantity<'N'>
export type Pascals = Quantity<'Pa'>
export type MetresPerSecond = Quantity<'m/s'>

export const metres = (n: number): Metres => n as Metres
export const squareMetres = (n: number): SquareMetres => n as SquareMetres
export const kilograms = (n: number): Kilograms => n as Kilograms
export const radians = (n: number): Radians => n as Radians
export const newtons = (n: number): Newtons => n as Newtons
export const pascals = (n: number): Pascals => n as Pascals
export const metresPerSecond = (n: number): MetresPerSecond => n as MetresPerSecond

/** The sum of quantities of one unit. An empty sum is zero. */
export const sum = <Q extends Quantity<string>>(...terms: readonly Q[]): Q =>
  terms.reduce<number>((total, term) => total + term, 0) as Q

/** A point of the vessel: x aft from the forward perpendicular, y to starboard, z up from the load waterline. */
export interface Point3 {
  readonly x: Metres
  readonly y: Metres
  readonly z: Metres
}

export const point3 = (x: number, y: number, z: number): Point3 => ({
  x: metres(x),
  y: metres(y),
  z: metres(z),
})
