import { units } from '../measure/index.ts'
import type { Rig } from '../rig/index.ts'

/** Feet where the vessel measures in feet or inches, else metres: how her people would say it. */
const speaksFeet = ({ vessel }: Rig) => vessel.units[0] === 'ft' || vessel.units[0] === 'in'

/** A length as a finding says it: '7.70 m', or to the half inch '25 ft 3 1/2 in'. */
export function shownLength(rig: Rig, metres: number): string {
  if (!speaksFeet(rig)) return `${metres.toFixed(2)} m`
  const halves = Math.round((metres / units.in.si) * 2)
  const feet = Math.floor(halves / 24)
  const inches = Math.floor((halves % 24) / 2)
  const half = halves % 2 === 1 ? (inches > 0 ? ' 1/2' : '1/2') : ''
  const rest = `${inches > 0 || half === '' ? inches : ''}${half} in`
  if (feet === 0) return rest
  return inches === 0 && half === '' ? `${feet} ft` : `${feet} ft ${rest}`
}

/** An area as a finding says it: '24.1 square metres'. */
export function shownArea(rig: Rig, squareMetres: number): string {
  const feet = squareMetres / units.ft.si ** 2
  return speaksFeet(rig) ? `${Math.round(feet)} square feet` : `${squareMetres.toFixed(1)} square metres`
}

/** The distance between two pins as a finding says it: '10 cm'. */
export function shownGap(rig: Rig, metres: number): string {
  return speaksFeet(rig) ? shownLength(rig, metres) : `${Number((metres * 100).toFixed(1))} cm`
}

/** A rope's thickness: '10 mm', '3/8 in' to the sixteenth. */
export function shownThickness(rig: Rig, metres: number): string {
  if (!speaksFeet(rig)) return `${Number((metres * 1000).toFixed(1))} mm`
  let [parts, of] = [Math.round((metres / units.in.si) * 16), 16]
  while (parts % 2 === 0 && of > 1) [parts, of] = [parts / 2, of / 2]
  return of === 1 ? `${parts} in` : `${parts}/${of} in`
}
