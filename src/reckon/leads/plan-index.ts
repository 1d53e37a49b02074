import Flatbush from 'flatbush'
import type { Segment } from './segment.ts'

/**
 * Stretches found by where they lie, seen from above: leads go mostly up and down, and cover little of the deck.
 * The function returned gives the numbers of those wanted that lie within a reach of a stretch, seen from above.
 */
export function planIndex(strands: readonly Segment[]): Near {
  if (strands.length === 0) return () => []
  const index = new Flatbush(strands.length)
  for (const { from, to } of strands) {
    index.add(Math.min(from.x, to.x), Math.min(from.y, to.y), Math.max(from.x, to.x), Math.max(from.y, to.y))
  }
  index.finish()
  return ({ from, to }, reach, isWanted) =>
    index.search(
      Math.min(from.x, to.x) - reach,
      Math.min(from.y, to.y) - reach,
      Math.max(from.x, to.x) + reach,
      Math.max(from.y, to.y) + reach,
      isWanted,
    )
}

export type Near = (
  segment: Segment,
  reach: number,
  isWanted?: (number: number) => boolean,
) => readonly number[]
