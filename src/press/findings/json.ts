import { counted, type Finding } from '../../findings/index.ts'
import type { Lines } from './lines.ts'

/** Findings as JSON: lines and columns from 1, ends exclusive, with the count of each severity. */
export function jsonFindings(findings: readonly Finding[], lines: Lines): string {
  const listed = findings.map(({ rule, severity, at, message, aboard, remedy, related, fix }) => ({
    rule,
    severity,
    ...placed(at, lines),
    message,
    ...(aboard === undefined ? {} : { aboard }),
    ...(remedy === undefined ? {} : { remedy }),
    ...(related.length === 0
      ? {}
      : { related: related.map(one => ({ ...placed(one.at, lines), message: one.message })) }),
    ...(fix === undefined
      ? {}
      : {
          fix: {
            title: fix.title,
            edits: fix.edits.map(({ at: place, text }) => ({ ...placed(place, lines), text })),
          },
        }),
  }))
  return `${JSON.stringify({ findings: listed, ...counted(findings) }, null, 2)}\n`
}

function placed(at: Finding['at'], lines: Lines) {
  const start = lines.start(at)
  const end = lines.end(at)
  return { file: at.source, line: start.line, column: start.column, endLine: end.line, endColumn: end.column }
}
