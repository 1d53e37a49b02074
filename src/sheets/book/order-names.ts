import type { OrderRow } from '../../evolve/index.ts'
import type { Line } from '../../rig/index.ts'
import type { Book } from './book.ts'

/** A line's name in an order for this sail: its sail's name left out, another sail's kept, the mast's only if it differs. */
export function lineInOrder(line: Line, sail: string, { rig }: Pick<Book, 'rig'>): string {
  const own = rig.sailAt.get(sail)
  const isOwn =
    line.host?.name === sail || (line.host?.kind === 'spar' && sparsOf(own).includes(line.host.name))
  if (isOwn) return lowered(line.labelOnSail, line)
  return lowered(line.mast !== undefined && line.mast === own?.mast ? line.labelOnMast : line.label, line)
}

/** A line as an order calls it: 'weather brace', 'buntlines', 'brace named', 'then lee sheet', 'guy, when running'. */
export function callPhrase({
  name,
  several,
  reach,
  after,
  when,
}: Pick<OrderRow, 'reach' | 'after' | 'when'> & {
  readonly name: string
  readonly several: boolean
}): string {
  const noun = several ? plural(name) : name
  const called = reach === 'named' ? `${noun} named` : reach === 'all' ? noun : `${reach} ${noun}`
  return `${after ? 'then ' : ''}${called}${when === undefined ? '' : `, when ${when}`}`
}

/** Several of a line: 'sheets', 'inner buntlines'. */
export const plural = (noun: string): string => (/(s|x|ch|sh)$/.test(noun) ? `${noun}es` : `${noun}s`)

/** A station in the brief form of working lines: 'main', 'fcle', 'miz'; others as they are. */
export function briefStation(label: string): string {
  const name = label.toLowerCase()
  if (name === 'forecastle') return 'fcle'
  if (name.startsWith('mizzen')) return 'miz'
  return name.replace(/(?<=\w{3})[ -]?mast$/, '')
}

/** A printed name within a sentence: its first letter small, unless the word is all capitals or of another language. */
export function lowered(label: string, { foreign }: { readonly foreign: boolean }): string {
  if (foreign) return label
  const [first = '', second = ''] = label
  const shouted = second !== '' && second === second.toUpperCase() && second !== second.toLowerCase()
  return shouted ? label : first.toLowerCase() + label.slice(first.length)
}

/** Prose as a printer sets it: an apostrophe between or after letters is curled. */
export const curled = (prose: string): string => prose.replace(/(?<=\p{L})'/gu, '’')

/** Names in a sentence: 'a', 'a and b', 'a, b and c'. */
export function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}

/** A sentence's first letter as a capital. */
export const raised = (sentence: string): string => {
  const [first = ''] = sentence
  return first.toUpperCase() + sentence.slice(first.length)
}

function sparsOf(sail: ReturnType<Book['rig']['sailAt']['get']>): readonly string[] {
  if (!sail) return []
  return sail.kind === 'square' ? [sail.yard] : sail.on
}
