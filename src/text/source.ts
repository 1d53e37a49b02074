/** One text as the compiler read it. `name` is the path as the user would say it, with forward slashes. */
export interface Source {
  readonly name: string
  readonly text: string
}

/** A stretch of one source, in UTF-16 offsets; `end` is exclusive. Every node of the tree and the rig has one. */
export interface Span {
  readonly source: string
  readonly start: number
  readonly end: number
}

/** A place as people count it: line and column from 1. */
export interface LineColumn {
  readonly line: number
  readonly column: number
}

/** The span from the start of `first` to the end of `last`, both in one source. */
export const spanning = (first: Span, last: Span): Span => ({
  source: first.source,
  start: first.start,
  end: last.end,
})

/** Offsets at which the lines of a text begin. CR LF, LF and a lone CR each end a line. */
export function lineStarts(text: string): readonly number[] {
  const starts = [0]
  for (const ending of text.matchAll(/\r\n|\n|\r/g)) starts.push(ending.index + ending[0].length)
  return starts
}

/** Line and column, from 1, of an offset. Offsets past the end count as the end. */
export function lineColumn(starts: readonly number[], offset: number): LineColumn {
  let low = 0
  let high = starts.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if ((starts[middle] ?? 0) <= offset) low = middle
    else high = middle - 1
  }
  return { line: low + 1, column: offset - (starts[low] ?? 0) + 1 }
}
