import type { Point3 } from '../measure/index.ts'
import type { Place } from '../syntax/index.ts'
import { aft, metres, place, up } from './spoken.ts'
import type { Space } from './tables.ts'

/** Nearer than this a place isn't said anew. */
const within = 0.01

/**
 * A block's new place in the gear's own terms, axis by axis, so that it still goes with its spar: '0.50 m up'. A place
 * that the gear counts along an edge, or up a raked mast, is said from the ship's own axes.
 *
 * @param said the block's place as the gear says it
 * @param had where that is on this vessel
 * @param due where it is to be
 * @param side the side its line belongs to
 */
export function movedTo(
  said: Place | undefined,
  had: Point3,
  due: Space,
  side: 'port' | 'starboard' | undefined,
): string {
  const [x, y, z] = due
  const across = Math.abs(y) > within && (y < 0 ? 'port' : 'starboard') !== side
  const raked = Math.abs(z - had.z) > within && !said?.from?.words.endsWith('yard')
  if (
    !said?.from ||
    said.abreast ||
    across ||
    raked ||
    said.steps.some(({ direction }) => direction === 'down')
  )
    return `at ${place(due, side)}`
  const moves = [
    ...(Math.abs(x - had.x) > within ? [aft(along(said, 'aft', 'forward') + x - had.x)] : []),
    ...(Math.abs(Math.abs(y) - Math.abs(had.y)) > within ? [`${metres(y)} out`] : []),
    ...(Math.abs(z - had.z) > within ? [up(along(said, 'up', 'below') + z - had.z)] : []),
  ]
  return moves.join(' ')
}

/** How far the steps of a place go one way, less how far they go the other. */
const along = ({ steps }: Place, one: string, other: string) =>
  steps.reduce(
    (sum, { direction, measure }) =>
      sum + (direction === one ? measure.value : direction === other ? -measure.value : 0),
    0,
  )
