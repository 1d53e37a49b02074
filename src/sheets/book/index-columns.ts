import type { Mark } from '../sheet.ts'
import { leading } from './type.ts'

/** A row of an index, laid out for a column of a width, from the baseline of its first line. */
export interface Entry {
  readonly lines: (width: number) => number
  readonly draw: (x: number, y: number, width: number) => Mark
  /** Rows of one group stand close; a wider gap stands between two. */
  readonly group: string
}

/** A column of an index, each row with the baseline of its first line. */
export interface Column {
  readonly heading: string
  readonly isFirst: boolean
  readonly width: number
  readonly entries: readonly { readonly entry: Entry; readonly y: number }[]
}

const groupGap = 1.1

/**
 * Rows in as many columns as they need. A short group that would be parted goes whole into the next column;
 * a long one is parted between two rows.
 */
export function inColumns(
  heading: string,
  entries: readonly Entry[],
  width: number,
  room: { readonly first: number; readonly last: number },
): readonly Column[] {
  const columns: { entry: Entry; y: number }[][] = []
  let y = Number.POSITIVE_INFINITY
  for (const group of inGroups(entries)) {
    const height = groupHeight(group, width)
    const movesWhole = y + height > room.last && height < (room.last - room.first) / 2
    if (movesWhole) y = Number.POSITIVE_INFINITY
    for (const entry of group) {
      const taken = entry.lines(width) * leading.index
      if (y + taken - leading.index > room.last) {
        columns.push([])
        y = room.first
      }
      columns.at(-1)?.push({ entry, y })
      y += taken
    }
    y += groupGap
  }
  return columns.map((column, index) => ({ heading, isFirst: index === 0, width, entries: column }))
}

function inGroups(entries: readonly Entry[]): readonly (readonly Entry[])[] {
  const groups: Entry[][] = []
  for (const entry of entries) {
    const last = groups.at(-1)
    if (last && last[0]?.group === entry.group) last.push(entry)
    else groups.push([entry])
  }
  return groups
}

const groupHeight = (group: readonly Entry[], width: number): number =>
  group.reduce((total, entry) => total + entry.lines(width) * leading.index, 0) - leading.index
