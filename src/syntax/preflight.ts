import type { Finding } from '../findings/index.ts'
import type { Source, Span } from '../text/index.ts'
import { hiddenMarks } from './matchers.ts'
import { error } from './said.ts'

/** The limits of a text. Beyond them it is not read at all: no rig comes near, and a hostile text could cost minutes. */
export const limits = { bytes: 4 * 1024 * 1024, lineLength: 10_000, depth: 64 } as const

/** The first limit that a text breaks, or undefined where it may be read. */
export function overLimit(source: Source): Finding | undefined {
  const { text, name } = source
  if (sizeInBytes(text) > limits.bytes) {
    return refused(
      { source: name, start: 0, end: 0 },
      'This text is larger than 4 MB.',
      'Bring parts of it in from files of their own.',
    )
  }
  const levels = [0]
  for (let start = 0; start < text.length; ) {
    const end = lineEnd(text, start)
    const at = { source: name, start, end: Math.min(end, start + 80) }
    if (end - start > limits.lineLength) {
      return refused(
        at,
        `This line is longer than ${limits.lineLength} characters.`,
        'Break it where a new line says the same.',
      )
    }
    const column = margin(text, start, end)
    if (column !== undefined) {
      while ((levels[levels.length - 1] ?? 0) > column) levels.pop()
      if ((levels[levels.length - 1] ?? 0) < column) levels.push(column)
      if (levels.length > limits.depth) {
        return refused(
          at,
          `This line is set in ${levels.length - 1} levels deep.`,
          `No more than ${limits.depth} levels are read.`,
        )
      }
    }
    start = end + 1
  }
  return undefined
}

/** Marks that change the order of reading, or end a text unseen: each run of them, told but passed over. */
export function hiddenIn({ text, name }: Source): Finding[] {
  return [...text.matchAll(hiddenMarks)].slice(0, 20).map(match => {
    const code = (match[0].codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')
    const at: Span = { source: name, start: match.index, end: match.index + match[0].length }
    const message = `A mark that can't be seen stands here (U+${code}); it may make the text look like another.`
    return {
      ...error('syntax/hidden-mark', at, message, 'Take it out.'),
      fix: { title: 'Take the mark out', edits: [{ at, text: '' }] },
    }
  })
}

const refused = (at: Span, message: string, remedy: string) => error('syntax/too-much', at, message, remedy)

/** The length in UTF-8, counted only where it can matter. */
function sizeInBytes(text: string): number {
  if (text.length > limits.bytes || text.length * 3 <= limits.bytes) return text.length
  let bytes = 0
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i)
    // Half of a pair is two of its four bytes.
    bytes += code < 0x80 ? 1 : code < 0x800 || (code >= 0xd800 && code < 0xe000) ? 2 : 3
  }
  return bytes
}

function lineEnd(text: string, from: number): number {
  let end = from
  while (end < text.length && text.charCodeAt(end) !== 10 && text.charCodeAt(end) !== 13) end++
  return end
}

/** The column of a line's first word; undefined for a blank line or a remark. */
function margin(text: string, start: number, end: number): number | undefined {
  let column = 0
  for (let i = start; i < end; i++) {
    const code = text.charCodeAt(i)
    if (code === 9) column += 4 - (column % 4)
    else if (code === 32 || code === 0xa0) column++
    else return code === 35 ? undefined : column
  }
  return undefined
}
