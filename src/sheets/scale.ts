/** Denominators of the standard scales, largest scale first; the last ones are for rigs beyond any ship. */
const standardScales: readonly number[] = [
  20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2000, 2500, 5000, 10_000,
]

/** The scales a sheet may be composed in, so that it is at a standard one when it is printed so many times as large. */
export const scalesComposed = (enlarged: number): readonly number[] =>
  standardScales.map(scale => scale * enlarged)

/** Millimetres of clear paper that a drawing to scale leaves inside its frame. */
export const clearOfFrame = 12
