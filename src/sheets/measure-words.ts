import { type Figure, type Metres, type SquareMetres, showLength } from '../measure/index.ts'
import type { Vessel } from '../rig/index.ts'

/** Whether the vessel's papers speak feet. */
export const speaksFeet = ({ units }: Vessel): boolean => units[0] === 'ft' || units[0] === 'in'

/** A length of the ship as her papers say it: '61.5 m', '201 ft 9 in'. */
export function shipLength(length: Metres | undefined, vessel: Vessel): string {
  if (length === undefined) return notRecorded
  return speaksFeet(vessel) ? showLength(length, 'ft and in') : showLength(length, 'm', 1)
}

/** A short length with its hundredths: '3.16 m', '10 ft 4 in'. */
export function shortLength(length: Metres, vessel: Vessel): string {
  return showLength(length, speaksFeet(vessel) ? 'ft and in' : 'm')
}

/** A sail's area: '1,111.2 m²', '11,961 ft²'. */
export function areaWords(area: SquareMetres, vessel: Vessel): string {
  return speaksFeet(vessel) ? `${decimals(area / 0.3048 ** 2, 0)} ft²` : `${decimals(area, 1)} m²`
}

/** The area, or that it is not known. */
export const areaFigure = (area: Figure<SquareMetres>, vessel: Vessel): string =>
  area.known ? areaWords(area.value, vessel) : notKnown

export const notRecorded = 'not recorded'
export const notKnown = 'not known'

/** A number with so many decimals, thousands grouped by commas and a true minus. */
export function decimals(n: number, places: number): string {
  const [whole = '0', fraction] = Math.abs(n).toFixed(places).split('.')
  const isNothing = /^[0.]*$/.test(`${whole}${fraction ?? ''}`)
  const sign = n < 0 && !isNothing ? '−' : ''
  return `${sign}${grouped(whole)}${fraction === undefined ? '' : `.${fraction}`}`
}

const grouped = (digits: string): string => digits.replace(/\B(?=(\d{3})+$)/g, ',')
