import type { Side } from './tables.ts'

/** What a column of sides may say: one side, both (a row told for the two of a pair), or neither. */
export type SideSaid = Side | 'both' | 'neither'

/** The words for sides, as names are compared. */
export const sides: ReadonlyMap<string, SideSaid> = new Map<string, SideSaid>([
  ...['p', 'port'].map(word => [word, 'port'] as const),
  ...['s', 'starboard', 'stbd'].map(word => [word, 'starboard'] as const),
  ...['ps', 'p+s', 'p/s', 'p&s', 'p and s', 'both', 'pair', 'port and starboard'].map(
    word => [word, 'both'] as const,
  ),
  ...['', 'c', 'centre', 'center', 'midships'].map(word => [word, 'neither'] as const),
])

export const bothSides: readonly Side[] = ['port', 'starboard']

/** A name without the side it ends in, and that side. */
export function withoutSide(name: string): { readonly words: string; readonly side: Side | undefined } {
  const [, words = name, side] =
    /^(.*\S),? (port|starboard|stbd)$/.exec(name.replace(/\((\w+)\)$/, '$1')) ?? []
  return {
    words: words.replace(/,$/, ''),
    side: side === undefined ? undefined : side === 'port' ? 'port' : 'starboard',
  }
}
