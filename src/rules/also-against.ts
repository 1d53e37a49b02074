import type { Fix } from '../findings/index.ts'
import type { Line, Rig } from '../rig/index.ts'
import type { Span } from '../text/index.ts'
import { whereSaid } from './where.ts'

/** A fix that says "also against" one line of another, below all else that is said of it; none for a gear brought in. */
export function alsoAgainst(rig: Rig, line: Line, counterpart: Line): { readonly fix?: Fix } {
  const said = whereSaid(rig, line)
  const text = rig.sources.find(({ name }) => name === said.source)?.text
  if (said !== line.span || text === undefined) return {}
  const name = (counterpart.pairKey.split('.').at(-1) ?? '').replaceAll('-', ' ')
  const words = `also against ${line.pairKey === counterpart.pairKey ? 'other ' : ''}${name}`
  return { fix: { title: `Say "${words}"`, edits: [addition(text, said, words)] } }
}

/** A clause put in behind a statement: on a line of its own under its block or, where it has none, after a comma. */
function addition(text: string, said: Span, words: string): Fix['edits'][number] {
  const lines = text.slice(said.start).split('\n').slice(1)
  const margin = marginOf(text.slice(0, said.start).split('\n').at(-1) ?? '')
  const isSetIn = (line: string) => isBlank(line) || marginOf(line) > margin
  const below = lines.slice(0, lines.findIndex(line => !isSetIn(line)) >>> 0)
  const last = below.findLastIndex(line => !isBlank(line))
  if (last < 0) return { at: { ...said, start: said.end }, text: `, ${words}` }
  const head = text.slice(said.start).indexOf('\n') + 1
  const end = said.start + head + below.slice(0, last + 1).join('\n').length
  const deep = ' '.repeat(marginOf(below[last] ?? ''))
  return { at: { source: said.source, start: end, end }, text: `\n${deep}${words}` }
}

const isBlank = (line: string) => /^\s*(#|$)/.test(line)
const marginOf = (line: string) => line.length - line.trimStart().length
