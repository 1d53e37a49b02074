import { isInside, shapeOf } from '../clip.ts'
import { cover, ink } from '../ink.ts'
import type { Point } from '../sheet.ts'
import type { Ship } from './ship.ts'

/** Ground of a square sail: mast, doubling, top and crosstrees ghost through it. */
export const squareGround = { ink: ink.squareSail, opacity: cover.square } as const
/** Ground of a fore-and-aft sail. */
export const foreAndAftGround = { ink: ink.foreAndAftSail, opacity: cover.foreAndAft } as const

/** The colour that letters at a point stand on: of the nearest sail there, of the underbody, else of the paper. */
export function groundAt({ sails, hull, lines }: Ship, point: Point): string {
  const sail = sails.findLast(({ shape }) => isInside(point, shape))
  if (sail) return groundOf(sail.sail.kind !== 'fore-and-aft')
  const isUnder = hull && lines?.isRecorded && isInside(point, shapeOf(hull.under))
  return isUnder ? ink.belowWater : ink.paper
}

/** The colour a sail's ground comes to on paper. */
export const groundOf = (isSquare: boolean): string => (isSquare ? ink.squareOnPaper : ink.foreAndAftOnPaper)
