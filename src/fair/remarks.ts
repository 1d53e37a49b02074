import { movedTo, perLevel, type Row } from './rows.ts'

/** A margin as it was: which level it is of, and its column. */
interface Margin {
  readonly level: number
  readonly at: number
}

/**
 * Sets the remarks that stand alone: under the remark above them where they stood under it, else at the margin, of those
 * open there or next, whose column was nearest. `set` holds the rows of words as they are set already.
 */
export function setRemarks(rows: readonly Row[], set: readonly Row[]): readonly Row[] {
  const next = marginsBehind(rows)
  const open: Margin[] = [{ level: 0, at: 0 }]
  const done: Row[] = []
  for (const [index, row] of rows.entries()) {
    const above = rows[index - 1]?.remark
    if (row.level !== undefined) {
      open.length = Math.min(open.length, row.level)
      open.push({ level: row.level, at: row.cells[0]?.at ?? 0 })
      done.push(set[index] as Row)
    } else if (row.remark) {
      const follows = above?.at === row.remark.at ? done.at(-1)?.remark?.at : undefined
      const margins = [...(next[index] ?? []), ...open.toReversed()]
      done.push({ ...row, remark: movedTo(row.remark, follows ?? nearestTo(row.remark.at, margins)) })
    } else done.push(row)
  }
  return done
}

function nearestTo(column: number, margins: readonly Margin[]): number {
  const off = ({ at }: Margin) => Math.abs(at - column)
  const [first, ...rest] = margins
  const nearest = first && rest.reduce((a, b) => (off(b) < off(a) ? b : a), first)
  return (nearest?.level ?? 0) * perLevel
}

/** For each row the margin of the next one that holds words, where there is one. */
function marginsBehind(rows: readonly Row[]): readonly (readonly Margin[])[] {
  const behind: (readonly Margin[])[] = []
  let next: readonly Margin[] = []
  for (const row of rows.toReversed()) {
    behind.push(next)
    if (row.level !== undefined) next = [{ level: row.level, at: row.cells[0]?.at ?? 0 }]
  }
  return behind.reverse()
}
