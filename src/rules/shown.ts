import { fixed, metres, showLength, units } from '../measure/index.ts'
import type { Rig } from '../rig/index.ts'

/** Feet where the vessel measures in feet or inches, else metres: as her people would say it. */
export const speaksFeet = ({ vessel }: Rig): boolean => vessel.units[0] === 'ft' || vessel.units[0] === 'in'

/** A length as a finding says it: '7.70 m', '25 ft 3 1/2 in'. */
export const shownLength = (rig: Rig, length: number): string =>
  showLength(metres(length), speaksFeet(rig) ? 'ft and in' : 'm')

/** The distance between two pins: '10.0 cm', '4 in'. */
export const shownGap = (rig: Rig, length: number): string =>
  showLength(metres(length), speaksFeet(rig) ? 'ft and in' : 'cm')

/** How near two ropes pass each other: '1.2 cm from it', 'touching it'. */
export const howNear = (rig: Rig, clear: number): string =>
  clear < 0.0005 ? 'touching it' : `${shownGap(rig, clear)} from it`

/** A rope's thickness: '10 mm', '0.4 in'. */
export const shownThickness = (rig: Rig, length: number): string =>
  showLength(metres(length), speaksFeet(rig) ? 'in' : 'mm')

/** An area: '24.1 square metres', '259 square feet'. */
export function shownArea(rig: Rig, squareMetres: number): string {
  if (!speaksFeet(rig)) return `${fixed(squareMetres, 1)} square metres`
  return `${fixed(squareMetres / units.ft.si ** 2, 0)} square feet`
}
