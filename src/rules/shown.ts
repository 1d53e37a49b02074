import type { Rig } from '../rig/index.ts'

export const shownLength = (rig: Rig, metres: number): string =>
  `${metres.toFixed(2)} ${rig.vessel.units[0] ?? 'm'}`

export const shownArea = (_rig: Rig, squareMetres: number): string => `${squareMetres.toFixed(1)} m²`
