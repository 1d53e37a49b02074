import type { Finding } from '../findings/index.ts'
import {
  type Emphasis,
  jsonFindings,
  linesOf,
  noEmphasis,
  plainFindings,
  sarifFindings,
} from '../press/findings/index.ts'
import type { Source } from '../text/index.ts'
import type { Format } from './options.ts'

/** Findings in the form asked for, ready to be written. */
export function told(
  findings: readonly Finding[],
  sources: readonly Source[],
  {
    format,
    version,
    stream,
  }: { readonly format: Format; readonly version: string; readonly stream: NodeJS.WriteStream },
): string {
  const lines = linesOf(sources)
  switch (format) {
    case 'json':
      return jsonFindings(findings, lines)
    case 'sarif':
      return sarifFindings(findings, lines, version)
    case 'plain':
      return plainFindings(findings, lines, emphasisOf(stream))
  }
}

/** Colour only at a terminal, and never where NO_COLOR is set. Red and green are left to port and starboard. */
function emphasisOf(stream: NodeJS.WriteStream): Emphasis {
  if (!stream.isTTY || process.env['NO_COLOR']) return noEmphasis
  const codes = { error: '1', warning: '1;33', note: '2', rule: '2' } as const
  return (words, as) => `\u001b[${codes[as]}m${words}\u001b[0m`
}
