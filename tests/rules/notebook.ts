import type { Line, Rig, Sail, Spar } from '../../src/rig/index.ts'
import { lineColumn, lineStarts, type Span } from '../../src/text/index.ts'
import { compiledText, exampleRigs, exampleText } from '../support/compiled.ts'

/** A rig's text, line by line, and the sound rig that it makes. Faults are planted in it by changing single lines. */
export interface Notebook {
  readonly name: string
  readonly lines: readonly string[]
  readonly rig: Rig
}

/** A text with one fault in it, and what must be found where. */
export interface Planted {
  readonly text: string
  /** One of these is enough. */
  readonly rules: readonly string[]
  /** On one of these lines, from 1; anywhere where none is told. */
  readonly lines: readonly number[]
}

/** A notebook of every example rig. */
export const notebooks = (): readonly Notebook[] => exampleRigs.map(notebookOf)

export function notebookOf(vessel: string): Notebook {
  const name = `${vessel}.rig`
  const text = exampleText(vessel)
  return { name, lines: text.split('\n'), rig: compiledText(text, name).value.rig }
}

/** The text with one line changed. */
export const withLine = ({ lines }: Notebook, line: number, words: string): string =>
  lines.with(line - 1, words).join('\n')

/** The text with several lines changed. */
export const withLines = ({ lines }: Notebook, changes: ReadonlyMap<number, string>): string =>
  lines.map((words, index) => changes.get(index + 1) ?? words).join('\n')

/** The text with a line put in below another. */
export const withLineBelow = ({ lines }: Notebook, line: number, words: string): string =>
  lines.toSpliced(line, 0, words).join('\n')

export const wordsAt = ({ lines }: Notebook, line: number): string => lines[line - 1] ?? ''

/** On which line of the notebook something stands; undefined where it is in another text. */
export function lineOf({ name, lines }: Notebook, span: Span | undefined): number | undefined {
  if (span?.source !== name) return undefined
  return lineColumn(lineStarts(lines.join('\n')), span.start).line
}

/** A sail or spar with the lines of its entry and of the gear hung on it. */
export interface Hung<T> {
  readonly thing: T
  readonly entry: number
  readonly gear: number
}

export function sailsIn(book: Notebook): readonly Hung<Sail>[] {
  return book.rig.sails.flatMap(sail => {
    const entry = lineOf(book, sail.span)
    const gear = entry === undefined ? undefined : gearBelow(book, entry)
    return entry === undefined || gear === undefined ? [] : [{ thing: sail, entry, gear }]
  })
}

export function sparsIn(book: Notebook): readonly { readonly thing: Spar; readonly entry: number }[] {
  return book.rig.spars.flatMap(spar => {
    const entry = lineOf(book, spar.span)
    return entry === undefined ? [] : [{ thing: spar, entry }]
  })
}

function gearBelow(book: Notebook, entry: number): number | undefined {
  for (let line = entry + 1; /^ {4}/.test(wordsAt(book, line)); line++) {
    if (/^ {4}gear /.test(wordsAt(book, line))) return line
  }
  return undefined
}

/** A line of the gear and the berth that the text gives it: by itself on its line or beside others. */
export interface Berth {
  readonly line: Line
  readonly at: number
  /** What stands there, as '7   topgallant clewline' or 'port jib halyard'. */
  readonly words: string
}

/** Every berth on a page "belay on", less those that a page "like" another reads for two masts at once. */
export function berthsIn(book: Notebook): readonly Berth[] {
  const seats = new Map<string, readonly Line[]>()
  for (const line of book.rig.lines) {
    const at = line.belaySpan
    if (at?.source === book.name) seats.set(`${at.start}`, [...(seats.get(`${at.start}`) ?? []), line])
  }
  return [...seats.values()].flatMap(lines => {
    const [line] = lines
    const at = lineOf(book, line?.belaySpan)
    const isShared = new Set(lines.map(({ pairKey }) => pairKey)).size > 1
    if (!line || at === undefined || isShared || !/^ {2}\d/.test(wordsAt(book, at))) return []
    return [{ line, at, words: book.lines.join('\n').slice(line.belaySpan?.start, line.belaySpan?.end) }]
  })
}

/** A berth that a pair has alone on its pin: '  7   topgallant clewline'. */
export const isAlone = (book: Notebook, { at, words, line }: Berth): boolean =>
  line.pair && new RegExp(`^ {2}\\d+[a-z]? +${words}\\s*(#.*)?$`).test(wordsAt(book, at))

/** The pin number and the blanks after it. */
export const pinOf = (words: string): string => /^ {2}\d+[a-z]? +/.exec(words)?.[0] ?? ''
