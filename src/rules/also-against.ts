import type { Fix } from '../findings/index.ts'
import type { Line, Rig } from '../rig/index.ts'
import type { Span } from '../text/index.ts'
import { whereSaid } from './where.ts'

/** A fix that says "also against" one line of another, below all else that is said of it; none for a gear brought in. */
export function alsoAgainst(rig: Rig, line: Line, counterpart: Line): { readonly fix?: Fix } {
  const edit = againstEdit(rig, line, counterpart)
  return edit ? { fix: { title: `Say "${edit.words}" of the ${line.words}`, edits: [edit.edit] } } : {}
}

/** The same said of each of two lines for the other; the two of a pair are one in the text. */
export function alsoAgainstEachOther(rig: Rig, line: Line, other: Line): { readonly fix?: Fix } {
  if (line.pairKey === other.pairKey) return alsoAgainst(rig, line, other)
  const [there, back] = [againstEdit(rig, line, other), againstEdit(rig, other, line)]
  if (!there || !back) return {}
  return { fix: { title: `Say "${there.words}" and "${back.words}"`, edits: [there.edit, back.edit] } }
}

function againstEdit(rig: Rig, line: Line, counterpart: Line) {
  const said = whereSaid(rig, line)
  const text = rig.sources.find(({ name }) => name === said.source)?.text
  if (said !== line.span || text === undefined) return undefined
  const name = (counterpart.pairKey.split('.').at(-1) ?? '').replaceAll('-', ' ')
  const words = `also against ${line.pairKey === counterpart.pairKey ? 'other ' : ''}${name}`
  return { words, edit: addition(text, said, words) }
}

/** A clause put in behind a statement: on a line of its own under its block or, where it has none, after a comma. */
function addition(text: string, said: Span, words: string): Fix['edits'][number] {
  const margin = marginOf(text, text.lastIndexOf('\n', said.start - 1) + 1)
  let last: { readonly begin: number; readonly end: number } | undefined
  for (const line of linesFrom(text, said.end)) {
    if (isBlank(text, line.begin)) continue
    if (marginOf(text, line.begin) <= margin) break
    last = line
  }
  if (!last) return { at: { ...said, start: said.end }, text: `, ${words}` }
  const deep = ' '.repeat(marginOf(text, last.begin))
  const ending = text[last.end] === '\r' ? '\r\n' : '\n'
  return { at: { source: said.source, start: last.end, end: last.end }, text: `${ending}${deep}${words}` }
}

/** The lines after an offset, each without its end. */
function* linesFrom(text: string, offset: number) {
  for (let begin = text.indexOf('\n', offset) + 1; begin > 0; begin = text.indexOf('\n', begin) + 1) {
    const next = text.indexOf('\n', begin)
    const end = next < 0 ? text.length : next
    yield { begin, end: text[end - 1] === '\r' ? end - 1 : end }
  }
}

const marginOf = (text: string, begin: number): number => matchAt(/ */y, text, begin)
const isBlank = (text: string, begin: number): boolean => matchAt(/[ \t\r]*(?:[#\n]|$)/y, text, begin) > 0

/** How long a stretch a sticky pattern takes from here; 0 where it takes none. */
function matchAt(pattern: RegExp, text: string, begin: number): number {
  pattern.lastIndex = begin
  return pattern.exec(text)?.[0].length ?? 0
}
