import type { BelayingPoint, Line, Place, Rail, Rig } from '../rig/index.ts'

/** A line in full, within a sentence: 'fore topsail sheet, port'. */
export const lineName = (line: Line): string => (line.side ? `${line.words}, ${line.side}` : line.words)

/** Both lines of a pair, within a sentence: 'fore topsail sheet, port and starboard'. */
export const pairName = (line: Line): string => `${line.words}, port and starboard`

/** A line as what a sentence speaks of: a name that ends in its side is closed by a comma. */
export const subject = (line: Line): string => (line.side ? `${lineName(line)},` : line.words)

/** Both lines of a pair as what a sentence speaks of. */
export const pairSubject = (line: Line): string => `${pairName(line)},`

/** A line or, where it is one of a pair that fares alike, both. */
export const bothSubject = (line: Line): string => (line.pair ? pairSubject(line) : line.words)

/** A place on deck in the rigger's words: 'fore rail, port, pin 11', 'fore tack kevel, starboard'. */
export function placeName(rig: Rig, place: Place | BelayingPoint): string {
  const rail = rig.railAt.get(place.rail)
  if (!rail) return `${place.rail} ${place.pin}`
  return rail.places.length > 1 ? `${railName(rail)}, pin ${place.pin}` : railName(rail)
}

/** A place as what a sentence speaks of: one that ends in its side is closed by a comma. */
export function placeSubject(rig: Rig, place: Place | BelayingPoint): string {
  const name = placeName(rig, place)
  return /, (port|starboard)$/.test(name) ? `${name},` : name
}

/** A rail with its side, where it is one of two: 'fore rail, port'. */
export function railName(rail: Rail): string {
  return rail.mirrored ? `${rail.name}, ${rail.lie}` : rail.name
}

/** 'a, b and c'. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}

/** Words with the first letter large, to begin a sentence. */
export function sentence(words: string): string {
  const [first = ''] = words
  return first.toUpperCase() + words.slice(first.length)
}

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten']

/** A small number in words, as a sentence has it: 'two'. */
export const inWords = (count: number): string => small[count] ?? String(count)

/** What an allowance may call a line by: its address, the pair's, its words, and the sail or spar it hangs on. */
export function aboutLine(line: Line): readonly string[] {
  return [line.address, line.pairKey, line.words, ...(line.host ? [line.host.name] : [])]
}

/** What a finding on the shape of a sail explains, and one on its loads follows from. */
export const measuresOf = (sail: string): string => `measures of ${sail}`

/** What an allowance may call a rail by: its code, its mark and its name. */
export function aboutRail(rail: Rail | undefined): readonly string[] {
  return rail ? [rail.code, rail.mark, rail.name] : []
}
