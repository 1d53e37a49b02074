import { type Name, nameKey } from '../../syntax/index.ts'
import type { Side } from '../rail.ts'
import type { Hung } from './hung.ts'
import { isPluralOf } from './kit.ts'

/** How a name in the text finds its line: whole, with the leading words of its place before it, or by its sail's class on that mast. */
export interface LineNames {
  /** The pair key of a line by the key of its whole name. */
  readonly whole: (key: string) => string | undefined
  /** The line of a name, or why it is none. */
  readonly find: (name: Name, place?: string) => FoundLine | undefined
  /** Pair keys of all lines that a plural takes in, or of the one that a name is. */
  readonly findAll: (name: Name, place?: string) => readonly string[]
  /** Whether a name would be a line of a thing whose gear could not be made. */
  readonly isExcused: (name: Name, place?: string) => boolean
  /** What to offer for an unknown name. */
  readonly offers: (place?: string) => readonly string[]
}

export interface FoundLine {
  readonly pairKey: string
  /** The side the name itself says: 'fore.course.clewline.port'. */
  readonly side: Side | undefined
  /** Another line that the same words could mean here, which gave way to this one. */
  readonly shadows: string | undefined
}

export function lineNames(lines: readonly Hung[], bare: readonly string[]): LineNames {
  const known = new Map([...byClass(lines), ...lines.map(line => [line.words, line.pairKey] as const)])
  const find = (name: Name, place = ''): FoundLine | undefined => {
    const { key, side } = withoutSide(nameKey(name.words))
    const whole = known.get(nameKey(name.words)) ?? known.get(key)
    const prefixed = prefixes(place)
      .map(prefix => known.get(`${prefix} ${key}`))
      .find(Boolean)
    const pairKey = whole ?? prefixed
    if (pairKey === undefined) return undefined
    return { pairKey, side, shadows: whole && prefixed && prefixed !== whole ? prefixed : undefined }
  }
  const findAll = (name: Name, place = ''): readonly string[] => {
    const one = find(name, place)
    if (one) return [one.pairKey]
    const key = nameKey(name.words)
    const hits = ['', ...prefixes(place).map(prefix => `${prefix} `)].map(prefix =>
      allOf(known, `${prefix}${key}`),
    )
    return hits.find(some => some.length > 0) ?? []
  }
  const offers = (place = '') => [
    ...known.keys(),
    ...prefixes(place).flatMap(prefix =>
      [...known.keys()].filter(key => key.startsWith(`${prefix} `)).map(key => key.slice(prefix.length + 1)),
    ),
  ]
  const isExcused = (name: Name, place = '') => {
    const { key } = withoutSide(nameKey(name.words))
    const wholes = [key, ...prefixes(place).map(prefix => `${prefix} ${key}`)]
    return bare.some(host => wholes.some(whole => whole.startsWith(`${host} `)))
  }
  return { whole: key => known.get(key), find, findAll, isExcused, offers }
}

/**
 * Lines of a sail that does not bear its mast's word, by the mast and the sail's class: "mizzen course clewgarnet" is the
 * crossjack's, "fore gaff sail throat halyard" the foresail's. On that mast's rails the first word falls away.
 */
function byClass(lines: readonly Hung[]): readonly (readonly [string, string])[] {
  const named = lines.flatMap(({ hanging, mast, line, pairKey }) => {
    const host = hanging?.host
    const word = mast?.replace(/ mast$/, '')
    if (!host || !('class' in host) || word === undefined || host.name.startsWith(`${word} `)) return []
    return [[`${word} ${host.class} ${nameKey(line.name.words)}`, pairKey] as const]
  })
  const meant = new Map<string, Set<string>>()
  for (const [words, pairKey] of named) meant.set(words, (meant.get(words) ?? new Set()).add(pairKey))
  return [...meant].flatMap(([words, pairKeys]) =>
    pairKeys.size === 1 ? [[words, [...pairKeys][0] ?? ''] as const] : [],
  )
}

function allOf(known: ReadonlyMap<string, string>, plural: string): readonly string[] {
  return [...new Set([...known].filter(([key]) => isPluralOf(plural, key)).map(([, pairKey]) => pairKey))]
}

/** The leading words of a place, longest first: 'main brace rail' gives 'main brace', 'main'. */
function prefixes(place: string): readonly string[] {
  const words = place.split(' ').filter(word => word !== '')
  return words.slice(0, -1).map((_, index) => words.slice(0, words.length - 1 - index).join(' '))
}

/** A side said with the name, at its beginning or its end. */
export function withoutSide(key: string): { readonly key: string; readonly side: Side | undefined } {
  if (!key.includes('port') && !key.includes('starboard')) return { key, side: undefined }
  const match = /^(?:(port|starboard) )?(.*?)(?: (port|starboard))?$/.exec(key)
  const side = (match?.[3] ?? match?.[1]) as Side | undefined
  return { key: match?.[2] ?? key, side }
}
