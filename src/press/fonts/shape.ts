import type { Font, GlyphRun } from 'fontkit'
import type { Typeface } from '../../sheets/index.ts'

/** What of a typeface decides which glyphs stand for the words, whatever their size. */
export type Setting = Pick<Typeface, 'face' | 'tabular' | 'tracking'>

/** OpenType features that are on (true) or off (false) where the font's own default is otherwise. */
export type Features = Readonly<Record<string, boolean>>

/** The features a typeface asks for; the PDF is set with the same. */
export function featuresOf({ tabular, tracking }: Omit<Setting, 'face'>): Features {
  return {
    ...(tabular ? { tnum: true, lnum: true } : {}),
    // Letters set apart can't be joined: a browser drops ligatures there too.
    ...(tracking ? { liga: false, clig: false, dlig: false } : {}),
  }
}

/** Glyphs and their places for words already made printable. */
export function shape(font: Font, words: string, setting: Omit<Setting, 'face'>): GlyphRun {
  // fontkit takes an object of switches too, though its types know only a list of features to turn on.
  return font.layout(words, featuresOf(setting) as unknown as string[])
}
