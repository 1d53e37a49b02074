import { isInside, shapeOf } from '../clip.ts'
import { ink } from '../ink.ts'
import type { Point } from '../sheet.ts'
import type { Ship } from './ship.ts'

/** Ground of a square sail: mast, doubling, top and crosstrees ghost through it. */
export const squareGround = { ink: ink.squareSail, opacity: 0.66 } as const
/** Ground of a fore-and-aft sail. */
export const foreAndAftGround = { ink: ink.foreAndAftSail, opacity: 0.9 } as const

/** The colour that letters at a point stand on: of the nearest sail there, of the underbody, else of the paper. */
export function groundAt({ sails, hull, lines }: Ship, point: Point): string {
  const sail = sails.findLast(({ shape }) => isInside(point, shape))
  if (sail) return groundOf(sail.sail.kind !== 'fore-and-aft')
  const isUnder = hull && lines?.isRecorded && isInside(point, shapeOf(hull.under))
  return isUnder ? ink.belowWater : ink.paper
}

/** The colour a sail's ground comes to on paper, so that a gap in its seams does not show as a patch. */
export const groundOf = (isSquare: boolean): string => {
  const { ink: colour, opacity } = isSquare ? squareGround : foreAndAftGround
  return mixed(ink.paper, colour, opacity)
}

function mixed(under: string, over: string, opacity: number): string {
  const part = (colour: string, i: number) => Number.parseInt(colour.slice(1 + 2 * i, 3 + 2 * i), 16)
  const channel = (i: number) => Math.round(part(under, i) * (1 - opacity) + part(over, i) * opacity)
  return `#${[0, 1, 2].map(i => channel(i).toString(16).padStart(2, '0')).join('')}`.toUpperCase()
}
