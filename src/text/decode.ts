import type { Span } from './source.ts'

/**
 * What was wrong with the bytes of a text: a finding in all but its type, which belongs to a later stage.
 */
export interface Unreadable {
  readonly rule: `${string}/${string}`
  readonly severity: 'error'
  readonly at: Span
  readonly message: string
  readonly remedy: string
  readonly related: readonly []
}

/**
 * The text that bytes stand for: UTF-8, or UTF-16 where its mark or its zero bytes tell of it. A byte-order mark is left off.
 * What is no text at all gives an empty text and one finding; single bytes that are no UTF-8 become U+FFFD, with one finding.
 */
export function decode(
  bytes: Uint8Array,
  name: string,
): { readonly value: string; readonly findings: readonly Unreadable[] } {
  if (isMarkedUp(bytes)) return { value: '', findings: [markedUp(name)] }
  const wide = wideOrder(bytes)
  if (wide !== undefined) return { value: withoutMark(new TextDecoder(wide).decode(bytes)), findings: [] }
  const text = withoutMark(new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes))
  const firstBad = text.indexOf(replacement)
  const broken = firstBad >= 0 && !isUtf8(bytes)
  if (broken && looksBinary(bytes)) return { value: '', findings: [binary(name)] }
  return { value: text, findings: broken ? [notUtf8(name, firstBad)] : [] }
}

const replacement = '\ufffd'

const withoutMark = (text: string) => (text.charCodeAt(0) === 0xfeff ? text.slice(1) : text)

/** UTF-16 by its byte-order mark, or by every second byte of the beginning being zero, as in plain English text. */
function wideOrder(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le'
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be'
  const sample = bytes.subarray(0, Math.min(bytes.length, 256) & ~1)
  if (sample.length < 4) return undefined
  const zeros = [0, 0]
  for (let i = 0; i < sample.length; i++) if (sample[i] === 0) zeros[i % 2] = (zeros[i % 2] ?? 0) + 1
  const [even = 0, odd = 0] = zeros
  const most = (sample.length / 2) * 0.9
  if (odd >= most && even === 0) return 'utf-16le'
  return even >= most && odd === 0 ? 'utf-16be' : undefined
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return true
  } catch {
    return false
  }
}

/** Text holds no bytes below a blank but tabs and line ends; pictures and archives are full of them. */
function looksBinary(bytes: Uint8Array): boolean {
  const sample = bytes.subarray(0, 4096)
  const low = sample.reduce(
    (count, byte) => count + (byte < 32 && byte !== 9 && byte !== 10 && byte !== 13 ? 1 : 0),
    0,
  )
  return low > sample.length / 50
}

/** What a word processor or a printer wrote: it begins with letters, and is no plain text all the same. */
const isMarkedUp = (bytes: Uint8Array) =>
  /^(?:\{\\rtf|%PDF)/.test(String.fromCharCode(...bytes.subarray(0, 5)))

const markedUp = (name: string): Unreadable => ({
  ...binary(name),
  message:
    'This is no plain text: it was saved with typefaces and margins, for a word processor or a printer.',
})

const binary = (name: string): Unreadable => ({
  rule: 'syntax/no-text',
  severity: 'error',
  at: { source: name, start: 0, end: 0 },
  message: 'This is no text: a picture, an archive or a program, by its bytes.',
  remedy: 'Give the rig file itself, saved as plain text in UTF-8.',
  related: [],
})

const notUtf8 = (name: string, at: number): Unreadable => ({
  rule: 'syntax/not-utf-8',
  severity: 'error',
  at: { source: name, start: at, end: at + 1 },
  message: 'From here on there are bytes that are no UTF-8: letters may stand wrong.',
  remedy: 'Save the file as UTF-8.',
  related: [],
})
