import type { Line, Place, Rig } from '../rig/index.ts'
import { nameKey } from '../syntax/index.ts'
import { nearest } from '../text/index.ts'
import { type LineName, namesOf, placeNames } from './line-names.ts'

/** What is called so. */
export interface Found {
  /** The lines, the two of a pair together, in the order of the text; each with the name that was met. */
  readonly lines: readonly { readonly pair: readonly Line[]; readonly by: LineName }[]
  /** Places with nothing on them, where a place was asked for. */
  readonly free: readonly Place[]
}

/**
 * The lines that words call: by any name or part of one, a short form, an address, a nickname, a label of any language, a
 * pin, or any of these shortened or slightly misspelt. A name that is met whole goes before one that is met in part, and
 * so on: only the best are told. With a side, only that side's.
 */
export function findLines(rig: Rig, words: string): Found {
  const { asked, side } = askedFor(words)
  if (asked === '') return { lines: [], free: [] }
  const isMeant = (line: Line) => side === undefined || (line.side ?? line.belay?.side) === side
  const lines = rig.lines.filter(isMeant).map(line => ({ line, names: folded(namesOf(line, rig)) }))
  const places = rig.rails.flatMap(rail =>
    rail.places
      .filter(place => place.lines.length === 0 && (side === undefined || place.side === side))
      .map(place => ({ place, names: placeNames(rail, place).map(fold) })),
  )
  for (const meets of ways) {
    const met = lines.flatMap(({ line, names }) => {
      const name = names.find(one => meets(asked, one.folded))
      return name ? [{ line, by: name.name }] : []
    })
    const isPlace = /\d/.test(asked)
    const free = places.filter(({ names }) => isPlace && names.some(name => meets(asked, name)))
    if (met.length + free.length > 0) return { lines: inPairs(met), free: free.map(({ place }) => place) }
  }
  return { lines: [], free: [] }
}

/** Names near to words that call nothing, to be offered. */
export const nearNames = (rig: Rig, words: string): readonly string[] =>
  nearest(
    fold(words),
    rig.lines.flatMap(line => [line.words, ...line.nicknames]),
  )

/** Without case, accents, hyphens and the like, a number apart: 'Klüver-Niederholer' is 'kluver niederholer', 'FR4' 'fr 4'. */
const fold = (words: string): string =>
  nameKey(words)
    .normalize('NFD')
    .replaceAll('ß', 'ss')
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .replace(/(?<=\p{L})(?=\p{N})/gu, ' ')
    .trim()

const folded = (names: readonly LineName[]) => names.map(name => ({ name, folded: fold(name.words) }))

/** A side is no part of the name: 'port jib halyard', 'FR 4 starboard'. */
function askedFor(words: string): { readonly asked: string; readonly side: string | undefined } {
  const all = fold(words).split(' ')
  const side = all.find(word => word === 'port' || word === 'starboard')
  return { asked: all.filter(word => word !== side).join(' '), side }
}

/** How a name may be met, the surest first. */
const ways: readonly ((asked: string, name: string) => boolean)[] = [
  (asked, name) => withoutSide(name) === asked,
  (asked, name) => closedUp(name) === closedUp(asked),
  (asked, name) => eachWord(asked, name, (word, other) => word === other),
  (asked, name) => eachWord(asked, name, begins),
  (asked, name) => eachWord(asked, name, (word, other) => begins(word, other) || isNear(word, other)),
]

/** As pins are printed: 'FR-P 4' and 'FRP4' are one. */
const closedUp = (words: string) => words.replaceAll(' ', '')

const withoutSide = (name: string) => name.replace(/ (?:port|starboard)\b/, '')

function eachWord(asked: string, name: string, is: (word: string, other: string) => boolean): boolean {
  const others = name.split(' ')
  return asked.split(' ').every(word => others.some(other => is(word, other)))
}

/** A number is met whole: pin 1 is not pin 14. */
const begins = (word: string, other: string) =>
  /\d/.test(word) ? word === other : other.startsWith(word) || word === `${other}s`

const isNear = (word: string, other: string) => !/\d/.test(word) && nearest(word, [other]).length > 0

function inPairs(met: readonly { readonly line: Line; readonly by: LineName }[]): Found['lines'] {
  const pairs = new Map<string, { readonly pair: Line[]; readonly by: LineName }>()
  for (const { line, by } of met) {
    const before = pairs.get(line.pairKey)
    if (before) before.pair.push(line)
    else pairs.set(line.pairKey, { pair: [line], by })
  }
  return [...pairs.values()]
}
