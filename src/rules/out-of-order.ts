import type { Line } from '../rig/index.ts'

/** What a finding on the order of a rail explains and follows from: the place of one line in it. */
export const orderOf = ({ pairKey }: Line): string => `order of ${pairKey}`

/**
 * Words of `row` that break the order of `model`: those to be moved, as few as can be, for the words common to
 * both to stand in the model's order (the rest is a longest rising run of the model's ranks). Both lists hold
 * each word once.
 */
export function outOfOrder(model: readonly string[], row: readonly string[]): readonly string[] {
  const rank = new Map(model.map((word, index) => [word, index]))
  const common = row.flatMap(word => {
    const at = rank.get(word)
    return at === undefined ? [] : [{ word, at }]
  })
  const kept = longestRising(common.map(({ at }) => at))
  return common.filter((_, index) => !kept.has(index)).map(({ word }) => word)
}

/** Positions of a longest rising run in a list of different numbers, by the ends of the best runs of each length. */
function longestRising(numbers: readonly number[]): ReadonlySet<number> {
  const ends: number[] = []
  const before: (number | undefined)[] = []
  for (const [index, number] of numbers.entries()) {
    const length = firstNotBelow(ends, number, end => numbers[end] ?? 0)
    before[index] = ends[length - 1]
    ends[length] = index
  }
  const kept = new Set<number>()
  for (let index = ends.at(-1); index !== undefined; index = before[index]) kept.add(index)
  return kept
}

function firstNotBelow(ends: readonly number[], number: number, value: (end: number) => number): number {
  let low = 0
  let high = ends.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (value(ends[middle] ?? 0) < number) low = middle + 1
    else high = middle
  }
  return low
}
