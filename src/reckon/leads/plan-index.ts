import Flatbush from 'flatbush'
import type { Segment } from './segment.ts'

/**
 * Stretches found by where they lie, seen from above: leads go mostly up and down, and cover little of the deck.
 * The function returned gives the numbers of those within `reach` metres of a stretch, seen from above, in their order.
 */
export function planIndex<T extends Segment>(
  strands: readonly T[],
  reach: number,
): (near: Segment) => readonly number[] {
  if (strands.length === 0) return () => []
  const index = new Flatbush(strands.length)
  for (const { from, to } of strands) {
    index.add(Math.min(from.x, to.x), Math.min(from.y, to.y), Math.max(from.x, to.x), Math.max(from.y, to.y))
  }
  index.finish()
  return ({ from, to }) =>
    index
      .search(
        Math.min(from.x, to.x) - reach,
        Math.min(from.y, to.y) - reach,
        Math.max(from.x, to.x) + reach,
        Math.max(from.y, to.y) + reach,
      )
      .sort((a, b) => a - b)
}
