import { millimetresPerPoint } from '../../sheets/index.ts'

/** PDF counts in points, 72 to the inch. */
export const pointsPerMillimetre = 1 / millimetresPerPoint
