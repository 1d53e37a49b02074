/**
 * Rows of cells as lines, each column as wide as its widest cell; a measure ends where the others of its column
 * end. A cell left empty takes no room where no row has one there.
 */
export function aligned(rows: readonly (readonly string[])[]): readonly string[] {
  const widths: number[] = []
  for (const row of rows)
    for (const [at, cell] of row.entries()) widths[at] = Math.max(widths[at] ?? 0, cell.length)
  const padded = (cell: string, width: number) =>
    /^\d/.test(cell) ? cell.padStart(width) : cell.padEnd(width)
  return rows.map(row =>
    row
      .flatMap((cell, at) => (widths[at] === 0 ? [] : [padded(cell, widths[at] ?? 0)]))
      .join(' ')
      .trimEnd(),
  )
}

/** Clauses with a comma behind each that another follows. */
export const listed = (...clauses: readonly (string | undefined)[]): readonly string[] =>
  clauses.map((clause, at) =>
    clause && clauses.slice(at + 1).some(next => next) ? `${clause},` : (clause ?? ''),
  )
