import { apart } from '../distance.ts'
import type { BelayedLine } from '../pairs.ts'

/** Two lines that are worked together, and what is found amiss between their places. */
export interface Worked<T> {
  readonly line: BelayedLine
  readonly other: BelayedLine
  readonly amiss: T
  /** Whether its fellow on the other side fares alike. */
  readonly onBothSides: boolean
}

/**
 * Lines worked together on one side between whose places something is amiss, once for a pair-name: the first in the
 * order of the text.
 */
export function workedTogether<T>(
  lines: readonly BelayedLine[],
  others: readonly BelayedLine[],
  judged: (line: BelayedLine, other: BelayedLine) => T | undefined,
): readonly Worked<T>[] {
  const found = lines.flatMap(line =>
    others.flatMap(other => {
      const isTogether = other !== line && (!line.side || !other.side || line.side === other.side)
      const amiss = isTogether ? judged(line, other) : undefined
      return amiss === undefined ? [] : [{ line, other, amiss }]
    }),
  )
  return found
    .filter((one, index) => index === found.findIndex(before => isAlike(before, one)))
    .map(one => ({ ...one, onBothSides: found.filter(other => isAlike(other, one)).length > 1 }))
}

/** Lines worked together on one side whose places are further apart than a limit, and how far in metres. */
export const farPairs = (
  lines: readonly BelayedLine[],
  others: readonly BelayedLine[],
  farthest: number,
): readonly Worked<number>[] =>
  workedTogether(lines, others, (line, other) => {
    const far = apart(line.belay, other.belay)
    return far !== undefined && far > farthest ? far : undefined
  })

/** What a finding on two lines far apart explains, and one on their sight of each other follows from. */
export const reachOf = ({ line, other }: Pick<Worked<unknown>, 'line' | 'other'>): string =>
  `reach of ${line.pairKey} to ${other.pairKey}`

type Two = Pick<Worked<unknown>, 'line' | 'other'>

const isAlike = (one: Two, two: Two) =>
  one.line.pairKey === two.line.pairKey && one.other.pairKey === two.other.pairKey
