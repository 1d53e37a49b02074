import type { Sail } from '../../../src/rig/index.ts'
import {
  type Berth,
  berthsIn,
  type Hung,
  lineOf,
  type Notebook,
  type Planted,
  sailsIn,
  withLine,
  withLineBelow,
  wordsAt,
} from '../notebook.ts'

/** A kind of fault, and every way of planting it in a notebook. */
export type Plant = (book: Notebook) => readonly Planted[]

/** A chapter of faults, by what a mate would call them. */
export type Plants = Readonly<Record<string, Plant>>

export const at = (line: number, rule: string, text: string): Planted => ({
  text,
  rules: [rule],
  lines: [line],
})

export const anywhere = (rule: string | readonly string[], text: string): Planted => ({
  text,
  rules: typeof rule === 'string' ? [rule] : rule,
  lines: [],
})

export const perBerth =
  (plant: (book: Notebook, berth: Berth) => Planted | undefined): Plant =>
  book =>
    berthsIn(book).flatMap(berth => plant(book, berth) ?? [])

export const perSail =
  (plant: (book: Notebook, sail: Hung<Sail>) => Planted | undefined): Plant =>
  book =>
    sailsIn(book).flatMap(sail => plant(book, sail) ?? [])

export const square =
  (...classes: readonly string[]) =>
  (sail: Sail) =>
    sail.kind === 'square' && (classes.length === 0 || classes.includes(sail.class))

export const stayed = (sail: Sail) => sail.class === 'headsail' || sail.class === 'staysail'

/** Whether a line of the sail's is sent down, so that nothing is worked by it. */
export const isLifted = ({ name }: Sail, { rig }: Notebook): boolean =>
  rig.lines.some(({ host, lifted }) => host?.name === name && lifted !== undefined)

/** Whether the gear of a sail has a line of these words. */
export const has = (book: Notebook, sail: Sail, ...words: readonly string[]): boolean =>
  words.every(word =>
    book.rig.lines.some(line => line.host?.name === sail.name && line.labelOnSail.toLowerCase() === word),
  )

/** A line left out of the gear of every sail of some kinds that has it: told at the sail or at its yard. */
export const without = (
  rule: string,
  names: string,
  fits: (sail: Sail) => boolean,
  where: 'sail' | 'yard',
): Plant =>
  perSail((book, { thing: sail, entry, gear }) => {
    if (!fits(sail) || !has(book, sail, ...names.split(' and '))) return undefined
    const yard = sail.kind === 'square' ? book.rig.sparAt.get(sail.yard) : undefined
    const line = where === 'sail' ? entry : lineOf(book, yard?.span)
    return line === undefined
      ? undefined
      : at(line, rule, withLineBelow(book, gear, `      without ${names}`))
  })

/** Something said of a line of the gear at the foot of it, for every sail of some kinds: told there. */
export const saying = (rule: string, words: string, fits: (sail: Sail, book: Notebook) => boolean): Plant =>
  perSail((book, { thing, gear }) => {
    let last = gear
    while (/^ {6}/.test(wordsAt(book, last + 1))) last++
    if (!fits(thing, book)) return undefined
    const lines = words.split('\n').map((_, index) => last + 1 + index)
    const said = words.split('\n').map(line => `      ${line}`)
    return { text: withLineBelow(book, last, said.join('\n')), rules: [rule], lines }
  })

/** A pattern on one line of the notebook made other words; undefined where it isn't there. */
export function edited(book: Notebook, line: number, pattern: RegExp, words: string): string | undefined {
  const old = wordsAt(book, line)
  return pattern.test(old) ? withLine(book, line, old.replace(pattern, words)) : undefined
}
