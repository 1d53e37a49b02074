import { apart } from '../distance.ts'
import type { BelayedLine } from '../pairs.ts'

/** Two lines that are worked together, and how far apart in metres. */
export interface FarPair {
  readonly line: BelayedLine
  readonly other: BelayedLine
  readonly far: number
}

/**
 * Pairs of lines worked together on one side whose places are further apart than a limit, once for a pair-name:
 * the first in the order of the text, and whether its fellow on the other side is as far from its own.
 */
export function farPairs(
  lines: readonly BelayedLine[],
  others: readonly BelayedLine[],
  farthest: number,
): readonly (FarPair & { readonly onBothSides: boolean })[] {
  const found = lines.flatMap(line => farFrom(line, others, farthest))
  return found
    .filter(({ line, other }, index) => index === found.findIndex(one => isAlike(one, line, other)))
    .map(pair => ({
      ...pair,
      onBothSides: found.filter(one => isAlike(one, pair.line, pair.other)).length > 1,
    }))
}

const isAlike = (one: FarPair, line: BelayedLine, other: BelayedLine) =>
  one.line.pairKey === line.pairKey && one.other.pairKey === other.pairKey

function farFrom(line: BelayedLine, others: readonly BelayedLine[], farthest: number): readonly FarPair[] {
  return others.flatMap(other => {
    const isTogether = !line.side || !other.side || line.side === other.side
    const far = other === line || !isTogether ? undefined : apart(line.belay, other.belay)
    return far !== undefined && far > farthest ? [{ line, other, far }] : []
  })
}
