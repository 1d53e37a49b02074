/**
 * Whether a measure can belong to a ship: finite, and under a kilometre. A slip of the pen (a mast of a million
 * metres) is left off the plan, so that the rest can still be drawn.
 */
export const isSober = (metres: number): boolean => Number.isFinite(metres) && Math.abs(metres) < 1000

/** Whether a point of the profile can belong to a ship. */
export const isSoberPoint = ({ x, z }: { readonly x: number; readonly z: number }): boolean =>
  isSober(x) && isSober(z)
