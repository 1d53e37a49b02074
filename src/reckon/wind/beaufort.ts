import { type MetresPerSecond, metresPerSecond } from '../../measure/index.ts'

/** One force of the scale: its limits as printed, in metres a second and in knots, and the mean in knots. */
export interface Force {
  readonly force: number
  readonly from: MetresPerSecond
  /** The last tenth that belongs to it; endless for a hurricane. */
  readonly to: MetresPerSecond
  readonly knots: { readonly from: number; readonly to: number; readonly mean: number | undefined }
}

/** An international nautical mile in an hour. */
export const knot = metresPerSecond(1852 / 3600)

const force = (
  number: number,
  [from, to]: readonly [number, number],
  [low, high, mean]: readonly [number, number, number?],
): Force => ({
  force: number,
  from: metresPerSecond(from),
  to: metresPerSecond(to),
  knots: { from: low, to: high, mean },
})

const endless = Number.POSITIVE_INFINITY

/**
 * The scale by its limits: the Beaufort table in metres a second of the Dutch page delta-s.org/weer/beaufort.html; limits
 * and means in knots from the Met Office form of the scale (infotextmanuscripts.org).
 */
export const beaufort: readonly Force[] = [
  force(0, [0, 0.2], [0, 0, 0]),
  force(1, [0.3, 1.5], [1, 3, 2]),
  force(2, [1.6, 3.3], [4, 6, 5]),
  force(3, [3.4, 5.4], [7, 10, 9]),
  force(4, [5.5, 7.9], [11, 16, 13]),
  force(5, [8, 10.7], [17, 21, 19]),
  force(6, [10.8, 13.8], [22, 27, 24]),
  force(7, [13.9, 17.1], [28, 33, 30]),
  force(8, [17.2, 20.7], [34, 40, 37]),
  force(9, [20.8, 24.4], [41, 47, 44]),
  force(10, [24.5, 28.4], [48, 55, 52]),
  force(11, [28.5, 32.6], [56, 63, 60]),
  force(12, [32.7, endless], [64, endless]),
]

/** Speed in the middle of a force, 10 m above the sea: G. C. Simpson, The Beaufort Scale of Wind-Force, Met Office no. 180, 1906 (from memory). */
export const middleOf = (force: number): MetresPerSecond => metresPerSecond(0.836 * force ** 1.5)

/** The force a wind belongs to, its speed rounded to the tenth as the table is. */
export function forceOf(speed: MetresPerSecond): number {
  const rounded = Math.round(speed * 10) / 10
  return beaufort.findLast(({ from }) => rounded >= from)?.force ?? 0
}
