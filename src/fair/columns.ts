import { setRemarks } from './remarks.ts'
import { type Cell, edgeOf, movedTo, perLevel, type Row } from './rows.ts'

/**
 * Rows with their margins and columns set: two columns a level, one blank between words. A word set off by more keeps
 * its column where a row beside it has a word that begins or ends there too. Remarks keep theirs.
 */
export function setColumns(rows: readonly Row[]): readonly Row[] {
  const beside = neighbours(rows)
  const set = [...rows]
  // What loses its neighbour comes in as well, and so on: only rows beside one that moved are looked at again.
  let doubtful: readonly number[] = rows.flatMap(({ level }, index) => (level === undefined ? [] : [index]))
  while (doubtful.length > 0) {
    const moved = doubtful.flatMap(index => {
      const row = set[index] as Row
      const now = setWords(
        row,
        (beside[index] ?? noneBeside).map(some => some.map(at => set[at] as Row)),
      )
      return isSame(row, now) ? [] : [{ index, now }]
    })
    for (const { index, now } of moved) set[index] = now
    doubtful = [...new Set(moved.flatMap(({ index }) => (beside[index] ?? noneBeside).flat()))]
  }
  return setRemarks(rows, set)
}

/** A row of words from its margin on. */
function setWords(row: Row, beside: readonly (readonly Row[])[]): Row {
  const margin = (row.level ?? 0) * perLevel
  const shift = margin - (row.cells[0]?.at ?? 0)
  const cells: Cell[] = []
  for (const [index, cell] of row.cells.entries()) {
    const next = (cells.at(-1)?.end ?? margin - 1) + 1
    const isHeld = isWide(row, index) && beside.some(rows => standsInColumn(cell, rows))
    cells.push(movedTo(cell, isHeld ? Math.max(next, cell.at + shift) : next))
  }
  const { remark } = row
  const end = cells.at(-1)?.end ?? margin
  return { ...row, cells, remark: remark && movedTo(remark, Math.max(end + 1, remark.at + shift)) }
}

/** Two blanks or more before a cell are set by hand. */
const isWide = ({ cells }: Row, index: number): boolean => {
  const before = cells[index - 1]
  return before !== undefined && (cells[index]?.at ?? 0) - before.end > 1
}

/** Whether the first row that has anything there begins or ends a word in the column in which this one begins or ends. */
function standsInColumn(cell: Cell, rows: readonly Row[]): boolean {
  const edge = edgeOf(cell)
  const atStart = rows.find(({ cells }) => cells.some(({ at, end }) => at <= cell.at && cell.at <= end))
  const atEnd = rows.find(({ cells }) => cells.some(({ at, end }) => at < edge && edge <= end))
  return (
    atStart?.cells.some(({ at }, i) => i > 0 && at === cell.at) ||
    atEnd?.cells.some((other, i) => i > 0 && edgeOf(other) === edge) ||
    false
  )
}

/** How many rows up and down a column is looked for. */
const reach = 12

/** Places of the rows before one, nearest first, and of those behind it. */
type Beside = readonly [readonly number[], readonly number[]]
const noneBeside: Beside = [[], []]

/** For each row those of its own level, with nothing further out between. */
function neighbours(rows: readonly Row[]): readonly Beside[] {
  const blocks: number[][] = []
  const places = rows.map(({ level }, index) => {
    if (level === undefined) return undefined
    blocks.length = Math.min(blocks.length, level + 1)
    const block = blocks[level] ?? []
    blocks[level] = block
    return { block, at: block.push(index) - 1 }
  })
  return places.map(place => {
    if (!place) return noneBeside
    const { block, at } = place
    return [block.slice(Math.max(0, at - reach), at).reverse(), block.slice(at + 1, at + 1 + reach)]
  })
}

const isSame = (a: Row, b: Row): boolean =>
  a.remark?.at === b.remark?.at &&
  a.cells.every(({ at, end }, i) => at === b.cells[i]?.at && end === b.cells[i]?.end)
