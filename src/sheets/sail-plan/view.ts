import type { Point } from '../sheet.ts'

/** How the ship's own measures come on paper: starboard profile, bow to the right. */
export interface View {
  readonly scale: number
  /** Millimetres on paper of one metre. */
  readonly metre: number
  /** The place on paper of x metres aft of the forward perpendicular and z above the waterline. */
  readonly at: (x: number, z: number) => Point
}

/** A view at 1 : scale, with the forward perpendicular at the waterline at `origin`. */
export function viewAt(scale: number, origin: Point): View {
  const metre = 1000 / scale
  return { scale, metre, at: (x, z) => ({ x: origin.x - x * metre, y: origin.y - z * metre }) }
}
