import type { Join } from './answer-graph.ts'
import type { Placed } from './answer-layout.ts'

/** A join within one column: a bracket beside it, so many steps out from the boxes. */
export interface Bracket {
  readonly join: Join
  readonly top: number
  readonly foot: number
  /** From 1. */
  readonly depth: number
}

export interface Brackets {
  readonly drawn: readonly Bracket[]
  /** Joins whose brackets would cross or run into another: they are told in words. */
  readonly told: readonly Join[]
  readonly depth: number
}

/** As many steps as a column has room for. */
const deepest = 2

/**
 * The joins within a column as brackets, the short ones inside the long. A box ends one bracket from above and
 * one from below at most.
 */
export function brackets(joins: readonly Join[], placed: readonly Placed[]): Brackets {
  const row = (key: string) => placed.find(({ node }) => node.pairKey === key)?.row ?? 0
  const spans = joins
    .map(join => ({ join, top: Math.min(...join.map(row)), foot: Math.max(...join.map(row)) }))
    .toSorted((a, b) => a.foot - a.top - (b.foot - b.top))
  const drawn: Bracket[] = []
  for (const span of spans) {
    const inside = drawn.filter(one => one.top < span.foot && one.foot > span.top)
    const nests = inside.every(one => one.top > span.top && one.foot < span.foot)
    const depth = Math.max(0, ...inside.map(one => one.depth)) + 1
    if (nests && depth <= deepest) drawn.push({ ...span, depth })
  }
  const shown = new Set(drawn.map(({ join }) => join))
  return {
    drawn,
    told: joins.filter(join => !shown.has(join)),
    depth: Math.max(0, ...drawn.map(({ depth }) => depth)),
  }
}
