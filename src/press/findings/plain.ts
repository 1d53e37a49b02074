import { counted, type Finding } from '../../findings/index.ts'
import type { Lines } from './lines.ts'

/** How a stretch of the output is set off at a terminal; everywhere else it comes back as it is. */
export type Emphasis = (words: string, as: Finding['severity'] | 'rule') => string

export const noEmphasis: Emphasis = words => words

/** Findings as plain text: each begins "file:line:column:", what it adds is set in below. Ends with a line end. */
export function plainFindings(
  findings: readonly Finding[],
  lines: Lines,
  emphasis: Emphasis = noEmphasis,
): string {
  const blocks = findings.map(finding => plainFinding(finding, lines, emphasis))
  return [...blocks, `${summary(findings)}\n`].join('\n')
}

function plainFinding(finding: Finding, lines: Lines, emphasis: Emphasis): string {
  const { severity, rule, message, aboard, remedy, related, fix } = finding
  const told = [
    `${lines.place(finding.at)}: ${emphasis(severity, severity)} ${emphasis(rule, 'rule')}: ${oneLine(message)}`,
    ...(aboard ? [`    Aboard: ${oneLine(aboard)}`] : []),
    ...(remedy ? [`    Do: ${oneLine(remedy)}`] : []),
    ...(fix ? [`    Fix: ${oneLine(fix.title)}`] : []),
    ...related.map(({ at, message: also }) => `    See ${lines.place(at)}: ${oneLine(also)}`),
  ]
  return `${told.join('\n')}\n`
}

/** "2 errors, 1 warning, 3 notes", or that she is clean. */
export function summary(findings: readonly Finding[]): string {
  const { errors, warnings, notes } = counted(findings)
  const parts = [several(errors, 'error'), several(warnings, 'warning'), several(notes, 'note')]
  const all = parts.filter(part => !part.startsWith('0 ')).join(', ')
  if (errors + warnings > 0) return all
  return notes > 0 ? `Clean: no error, no warning (${all}).` : 'Clean: no error, no warning.'
}

export const several = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`

/** Text from a rig file can hold anything: control characters would drive the reader's terminal. */
export const oneLine = (words: string): string =>
  words.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, one => `\\u{${(one.codePointAt(0) ?? 0).toString(16)}}`)
