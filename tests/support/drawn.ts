import type { Finding } from '../../src/findings/index.ts'
import { lineColumn, lineStarts } from '../../src/text/index.ts'

/** Findings as one line each: 'rule: message'. */
export const told = (findings: readonly Finding[]): string[] =>
  findings.map(({ rule, message }) => `${rule}: ${message}`)

/**
 * A text with its findings drawn below their places, as a bosun would be shown them:
 *
 *     belay on fore rail
 *       1  jib halyard )
 *     #                ^ error syntax/odd-mark: ")" means nothing here.
 */
export function drawn(text: string, findings: readonly Finding[]): string {
  const starts = lineStarts(text)
  const lines = text.split(/\r\n|\n|\r/)
  const below = new Map<number, string[]>()
  const inOrder = [...findings].sort((a, b) => a.at.start - b.at.start)
  for (const { rule, severity, at, message } of inOrder) {
    const { line, column } = lineColumn(starts, at.start)
    const width = Math.max(1, Math.min(at.end, at.start + (lines[line - 1]?.length ?? 0)) - at.start)
    const note = `#${' '.repeat(Math.max(0, column - 2))}${'^'.repeat(width)} ${severity} ${rule}: ${message}`
    below.set(line, [...(below.get(line) ?? []), note])
  }
  return lines.flatMap((line, i) => [line, ...(below.get(i + 1) ?? [])]).join('\n')
}

/** A drawn text without the notes drawn into it: every line that begins with '#' and a pointer. */
export const withoutNotes = (text: string): string =>
  text
    .split('\n')
    .filter(line => !/^# *\^/.test(line))
    .join('\n')
