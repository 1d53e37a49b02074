import type { Found } from '../findings/index.ts'
import { parse } from '../syntax/index.ts'
import type { Source } from '../text/index.ts'
import { setColumns } from './columns.ts'
import { type Row, rowsOf } from './rows.ts'

/**
 * The text set fair: margins of two spaces a level, one space between words. Remarks, blank lines, prose, quoted words, the
 * order of things and columns set by hand stay; no line is joined or split; line ends are as the first of them. A text that
 * can't be read soundly stays as it is, and the findings say why.
 */
export function fair(source: Source): Found<string> {
  const unsound = parse(source).findings.filter(({ severity }) => severity === 'error')
  if (unsound.length > 0) return { value: source.text, findings: unsound }
  const rows = rowsOf(source)
  const text = written(setColumns(rows), lineEndOf(source.text))
  if (!saysTheSame(rows, rowsOf({ ...source, text })))
    throw new Error(`setting ${source.name} fair would change what it says`)
  return { value: text, findings: [] }
}

const lineEndOf = (text: string): string => /\r\n|\r|\n/.exec(text)?.[0] ?? '\n'

/** The rows written out, each with its line end. */
function written(rows: readonly Row[], lineEnd: string): string {
  const lines = rows.map(({ cells, remark }) => {
    let line = ''
    let column = 0
    for (const { text, at, end } of [...cells, ...(remark ? [remark] : [])]) {
      line += ' '.repeat(at - column) + text
      column = end
    }
    return line
  })
  const isEnded = lines.at(-1) === ''
  return [...lines, ...(isEnded ? [] : [''])].join(lineEnd)
}

/** Whether two texts have the same words, remarks and levels, line by line. */
function saysTheSame(before: readonly Row[], after: readonly Row[]): boolean {
  return before.every((row, index) => {
    const now = after[index]
    return (
      row.level === now?.level &&
      row.remark?.text === now?.remark?.text &&
      row.cells.length === now?.cells.length &&
      row.cells.every(({ text }, i) => text === now.cells[i]?.text)
    )
  })
}
