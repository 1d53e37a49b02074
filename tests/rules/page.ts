import { readdirSync, readFileSync } from 'node:fs'
import type { Finding } from '../../src/findings/index.ts'
import type { Files } from '../../src/syntax/index.ts'
import { lineColumn, lineStarts } from '../../src/text/index.ts'
import { exampleFiles } from '../support/compiled.ts'

const folder = new URL('../../src/rules/', import.meta.url)

/** A page of the manual on one check: `name` is the file's, 'belay/two-on-a-pin'. */
export interface Page {
  readonly name: string
  readonly text: string
  /** The slug and the severities its second line gives. */
  readonly slug: string | undefined
  readonly severities: readonly string[]
  readonly fails: Example | undefined
  readonly mended: Example | undefined
}

/** A fenced rig: the entry, and the texts beside it, each fenced with its name. */
export interface Example {
  readonly entry: string
  readonly beside: ReadonlyMap<string, string>
}

/** What a note under a line of an example says is found there: '#  ^ error belay/two-on-a-pin: Fore rail ...'. */
export interface Mark {
  readonly source: string
  readonly line: number
  readonly column: number
  readonly severity: string
  readonly rule: string
  readonly message: string | undefined
}

/** Every page beside the rules. */
export const pages: readonly Page[] = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .map(file => file.replaceAll('\\', '/'))
  .filter(file => file.includes('/') && file.endsWith('.md'))
  .sort()
  .map(file => readPage(file.slice(0, -'.md'.length)))

export function readPage(name: string): Page {
  const text = readFileSync(new URL(`${name}.md`, folder), 'utf8')
  const [, slug, severities = ''] = /^\*\*(\S+)\*\* · (.+)$/m.exec(text) ?? []
  return {
    name,
    text,
    slug,
    severities: severities.match(/error|warning|note/g) ?? [],
    fails: exampleUnder('Fails', text),
    mended: exampleUnder('Mended', text),
  }
}

function exampleUnder(heading: string, text: string): Example | undefined {
  const [, section] = text.split(`\n## ${heading}\n`)
  const own = section?.split('\n## ')[0] ?? ''
  const fences = [...own.matchAll(/^```rig(?: (\S+))?\n(.*?)^```$/gms)]
  const entry = fences.find(([, name]) => name === undefined)?.[2]
  if (entry === undefined) return undefined
  const beside = fences.flatMap(([, name, body = '']) => (name === undefined ? [] : [[name, body] as const]))
  return { entry, beside: new Map(beside) }
}

/** The files of an example: those fenced beside it, and the standard gear. */
export const filesOf = ({ beside }: Example): Files => ({
  read: place => {
    const text = place.shelf === 'vessel' ? beside.get(place.path) : undefined
    if (text === undefined) return place.shelf === 'vessel' ? { kind: 'missing' } : exampleFiles.read(place)
    return { kind: 'text', source: { name: place.path, text }, findings: [] }
  },
})

const note = /^#\s*\^ (error|warning|note) ([a-z]+\/[a-z-]+)(?:: (.+))?$/

/** The notes of a text; each speaks of the nearest line above that is none, at the column of its caret. */
export function marksIn(text: string, source: string): readonly Mark[] {
  let above = 0
  return text.split('\n').flatMap((line, index) => {
    const [, severity = '', rule = '', message] = note.exec(line) ?? []
    if (rule === '') {
      above = index + 1
      return []
    }
    return [{ source, line: above, column: line.indexOf('^') + 1, severity, rule, message }]
  })
}

/** The name under which an example's entry is compiled. */
export const entryName = 'example.rig'

/** All notes of an example, in its entry and in the texts beside it. */
export const marksOf = ({ entry, beside }: Example): readonly Mark[] => [
  ...marksIn(entry, entryName),
  ...[...beside].flatMap(([name, text]) => marksIn(text, name)),
]

/** Whether a finding is what a note says: its caret stands somewhere under what is found. */
export function isMarked({ at, severity, rule, message }: Finding, mark: Mark, example: Example): boolean {
  const starts = lineStarts(
    mark.source === entryName ? example.entry : (example.beside.get(mark.source) ?? ''),
  )
  const from = lineColumn(starts, at.start)
  const to = lineColumn(starts, Math.max(at.end - 1, at.start))
  const lastColumn = to.line > from.line ? Number.POSITIVE_INFINITY : to.column
  // A caret can't stand under the first column, where the note's own "#" is.
  const isUnder = from.column <= mark.column && mark.column <= Math.max(lastColumn, 3)
  const isThere = at.source === mark.source && from.line === mark.line && isUnder
  return isThere && severity === mark.severity && rule === mark.rule && (mark.message ?? message) === message
}
