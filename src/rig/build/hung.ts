import { nameKey, type Statement } from '../../syntax/index.ts'
import type { Mast } from '../mast.ts'
import type { Side } from '../rail.ts'
import type { Sail } from '../sail.ts'
import type { Spar } from '../spar.ts'
import { altered, type Kit, type KitLine, looseLine } from './kit.ts'
import { leavesOf } from './leave.ts'
import { finding, type Say, unknownName } from './say.ts'
import { type FindThing, type Surroundings, thingsOf } from './thing.ts'

/** A gear as hung on one sail or spar. */
export interface Hanging {
  readonly host: Sail | Spar
  readonly kit: Kit
  /** The things of the host that a place in the gear may name. */
  readonly things: FindThing
}

/** One line as hung, before it is known where it belays. */
export interface Hung {
  readonly address: string
  readonly pairKey: string
  /** Key of the whole name without side: 'fore upper topsail clewline'. */
  readonly words: string
  /** Key of its own name, without its sail's or spar's: 'clewline'. */
  readonly own: string
  /** The name as printed, without side, small first letter. */
  readonly label: string
  readonly side: Side | undefined
  readonly line: KitLine
  readonly hanging: Hanging | undefined
  readonly mast: string | undefined
}

/** The gear that a sail or spar says it carries, altered by what it says of it. */
export function hang(
  host: Sail | Spar,
  entry: Statement,
  gears: ReadonlyMap<string, Kit>,
  around: Surroundings,
  say: Say,
): Hanging | undefined {
  const hangs = entry.block.filter(one => one.kind === 'hang')
  const [first, second] = hangs
  if (!first?.name) return undefined
  if (second?.name) {
    say(
      finding('name/twice', second.name.span, `The ${host.name} carries two gears.`, {
        remedy: 'Keep one, and add lines to it by "with".',
        related: [{ at: first.name.span, message: 'the first is hung here' }],
      }),
    )
  }
  const gear = gears.get(nameKey(first.name.words))
  if (!gear) {
    const near = [...gears.values()].map(kit => kit.name.words)
    const unknown = unknownName('gear', first.name, near, [host.name])
    const none =
      'Say "bring in standard gear" at the head of the text, or write the gear on a page of its own.'
    say(gears.size === 0 ? { ...unknown, remedy: none } : unknown)
    return undefined
  }
  const kit = altered(gear, first.block, 'hung', say)
  const leaves = leavesOf(first)
  const whole = leaves.length > 0 ? { ...kit, leaves: [...kit.leaves, ...leaves] } : kit
  return { host, kit: whole, things: thingsOf(host, around) }
}

/** All lines of a hanging: two for each pair, port first. */
export function hungLines(hanging: Hanging): readonly Hung[] {
  const { host, kit } = hanging
  const mastWord = masterWord(host.mast)
  return [...kit.lines.values()].flatMap(line =>
    sided(line, host.name, host.label, hanging, mastWord, host.mast),
  )
}

/** The line or lines of an entry on the page of lines. */
export function looseLines(entry: Statement, masts: readonly Mast[], say: Say): readonly Hung[] {
  if (!entry.name) return []
  const line = looseLine(entry, entry.name, say)
  const key = nameKey(entry.name.words)
  const mast = masts.find(one => key.startsWith(`${one.word} `))
  return sided(line, '', '', undefined, mast?.word, mast?.name)
}

const masterWord = (mast: string | undefined) => mast?.replace(/ mast$/, '')

function sided(
  line: KitLine,
  host: string,
  hostLabel: string,
  hanging: Hanging | undefined,
  mastWord: string | undefined,
  mast: string | undefined,
): readonly Hung[] {
  const own = nameKey(line.name.words)
  const words = host ? `${host} ${own}` : own
  const label = hostLabel ? `${hostLabel} ${line.name.words}` : line.name.words
  const pairKey = addressOf(host, own, mastWord)
  const sides: readonly (Side | undefined)[] = line.pair ? ['port', 'starboard'] : [undefined]
  return sides.map(side => ({
    address: side ? `${pairKey}.${side}` : pairKey,
    pairKey,
    words,
    own,
    label,
    side,
    line,
    hanging,
    mast,
  }))
}

/** 'fore.upper-topsail.clewline': mast, sail, line; words within each joined by hyphens. */
function addressOf(host: string, line: string, mastWord: string | undefined): string {
  const named = host && line ? `${host}.${line}` : `${host}${line}`
  return afterMast(named, mastWord).replaceAll(' ', '-')
}

/** 'fore.upper topsail'. */
const afterMast = (words: string, mastWord: string | undefined): string =>
  mastWord && words.startsWith(`${mastWord} `) ? `${mastWord}.${words.slice(mastWord.length + 1)}` : words

/** The two lines of each pair, or the one single line, by pair key. */
export function byPair<T extends { readonly pairKey: string }>(
  lines: readonly T[],
): ReadonlyMap<string, readonly T[]> {
  const pairs = new Map<string, T[]>()
  for (const line of lines) {
    const pair = pairs.get(line.pairKey)
    if (pair) pair.push(line)
    else pairs.set(line.pairKey, [line])
  }
  return pairs
}
