import type { Kilograms, Metres, Newtons, Radians } from './quantity.ts'
import { units } from './units.ts'

/** How lengths are shown on a paper: in one unit, or in feet and inches as spoken. */
export type LengthUnits = 'm' | 'mm' | 'cm' | 'ft' | 'in' | 'ft and in'
export type MassUnits = 'kg' | 't' | 'lb' | 'long tons'

/** A length as a rigger reads it: '12.40 m', '320 mm', '41 ft 6 in'. Feet and inches are given to the half inch. */
export function showLength(length: Metres, unit: LengthUnits, decimals = usualDecimals[unit]): string {
  if (unit === 'ft and in') return feetAndInches(length)
  return `${fixed(length / units[unit].si, decimals)} ${unit}`
}

/** A weight: '305 kg', '165.0 t'. */
export function showMass(
  mass: Kilograms,
  unit: MassUnits,
  decimals = unit === 't' || unit === 'long tons' ? 1 : 0,
): string {
  return `${fixed(mass / units[unit].si, decimals)} ${unit}`
}

/** A force: '2.91 kN', '654 lbf'. */
export function showForce(force: Newtons, unit: 'kN' | 'lbf'): string {
  return `${fixed(force / units[unit].si, unit === 'kN' ? 2 : 0)} ${unit}`
}

/** An angle in degrees: '3.0°'. */
export function showAngle(angle: Radians, decimals = 1): string {
  return `${fixed(angle / units.deg.si, decimals)}°`
}

/** A number with so many decimals, never '-0': the same on every machine, whatever its language. */
export function fixed(value: number, decimals: number): string {
  const shown = value.toFixed(decimals)
  return Number(shown) === 0 ? shown.replace('-', '') : shown
}

const usualDecimals: Readonly<Record<LengthUnits, number>> = {
  m: 2,
  mm: 0,
  cm: 1,
  ft: 2,
  in: 1,
  'ft and in': 0,
}

/** Rounded once, to the half inch, so that eleven inches and three quarters become the next foot. */
function feetAndInches(length: Metres): string {
  const halves = Math.round(Math.abs(length) / (units.in.si / 2))
  const sign = length < 0 && halves > 0 ? '-' : ''
  const feet = Math.floor(halves / 24)
  const rest = halves % 24
  const inches = `${Math.floor(rest / 2)}${rest % 2 === 1 ? ' 1/2' : ''}`.replace(/^0 /, '')
  if (feet === 0) return `${sign}${inches} in`
  return rest === 0 ? `${sign}${feet} ft` : `${sign}${feet} ft ${inches} in`
}
