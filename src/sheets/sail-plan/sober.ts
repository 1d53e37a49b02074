/** No ship's spar or hull measures so much, in metres. */
export const beyondAnyShip = 400

/**
 * Whether a measure can belong to a ship: finite, and no more than any ship has. A slip of the pen (a mast of a
 * million metres) is left off the plan, so that the rest can still be drawn.
 */
export const isSober = (metres: number): boolean =>
  Number.isFinite(metres) && Math.abs(metres) < beyondAnyShip

/** Whether a point of the profile can belong to a ship. */
export const isSoberPoint = ({ x, z }: { readonly x: number; readonly z: number }): boolean =>
  isSober(x) && isSober(z)
