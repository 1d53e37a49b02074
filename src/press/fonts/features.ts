import type { Typeface } from '../../sheets/index.ts'

/** OpenType features switched on (true) or off (false) against the font's own custom. */
export type Features = Readonly<Record<string, boolean>>

/** The features a typeface asks for: the same object for the same answer, so that it can be a key. */
export function featuresOf({ tabular = false, tracking = 0 }: Omit<Typeface, 'face' | 'size'>): Features {
  if (tabular) return tracking ? spacedColumns : columns
  return tracking ? spaced : plain
}

/** The features that a subset with these characters must still know, so that browsers shape words as we do. */
export function keptFeatures(characters: ReadonlySet<string>): readonly string[] {
  // Small figures take room, and only the fraction slash asks for them.
  return characters.has('\u2044') ? [...usual, 'frac', 'numr', 'dnom'] : usual
}

const usual: readonly string[] = [
  ...['ccmp', 'locl', 'rlig', 'calt', 'clig', 'liga', 'rclt', 'kern', 'mark', 'mkmk'],
  ...['tnum', 'lnum'],
]

const figures = { tnum: true, lnum: true }
// Letters set apart can't be joined: a browser drops ligatures there too.
const apart = { liga: false, clig: false }

const plain: Features = {}
const columns: Features = figures
const spaced: Features = apart
const spacedColumns: Features = { ...figures, ...apart }
