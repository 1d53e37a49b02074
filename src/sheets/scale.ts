/** Denominators of the standard scales, largest scale first; the last ones are for rigs beyond any ship. */
export const standardScales: readonly number[] = [
  20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2000, 2500, 5000, 10_000,
]

/** Millimetres of clear paper that a drawing to scale leaves inside its frame. */
export const clearOfFrame = 12

/** Room for a drawing, in millimetres on paper. */
export interface Room {
  readonly width: number
  readonly height: number
}

/**
 * The largest standard scale at which so many metres fit the room with the clear margin all round; `beside` is
 * what stands around the drawing at any scale (dimension lines, letters), in millimetres. Undefined where none fits.
 */
export function largestScale(
  metres: { readonly width: number; readonly height: number },
  room: Room,
  beside: Room = { width: 0, height: 0 },
): number | undefined {
  return standardScales.find(scale => {
    const millimetres = 1000 / scale
    return (
      metres.width * millimetres + beside.width <= room.width - 2 * clearOfFrame &&
      metres.height * millimetres + beside.height <= room.height - 2 * clearOfFrame
    )
  })
}
