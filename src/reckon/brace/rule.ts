import { type Radians, radians } from '../../measure/index.ts'

const degree = Math.PI / 180

/** Half a point: what each yard is braced in more than the one below, by the wind in a stiff breeze (R. H. Dana Jr, The Seaman's Friend, 5th ed., Boston 1847, ch. XI). */
export const halfPoint = radians(5.625 * degree)

/** Dana's fan: the lower yard where it stands, and each above half a point squarer; never beyond square. */
export const danasFan = (lower: Radians, yards: number): readonly Radians[] =>
  Array.from({ length: yards }, (_, i) => squareAtMost(lower + i * halfPoint))

/**
 * The lower yard for an apparent wind off the bow: half of it and four degrees, no sharper than the limit, no squarer
 * than square. Common practice, no source.
 */
export const lowerYard = (apparent: Radians, limit: Radians): Radians =>
  squareAtMost(Math.max(limit, apparent / 2 + 4 * degree))

/** How much squarer each yard is than the one below: 4 degrees by the wind, less as it draws aft, none before it. Common practice, no source. */
export const fanStep = (apparent: Radians): Radians =>
  radians(Math.max(0, Math.min(4, (4 * (180 - apparent / degree)) / 130)) * degree)

/** The fan of a mast by the rule, from the lower yard up. */
export const fanByRule = (apparent: Radians, limit: Radians, yards: number): readonly Radians[] =>
  Array.from({ length: yards }, (_, i) => squareAtMost(lowerYard(apparent, limit) + i * fanStep(apparent)))

const squareAtMost = (angle: number): Radians => radians(Math.min(Math.PI / 2, angle))
