import { once } from '../once.ts'
import { printable } from '../words.ts'
import type { Features } from './features.ts'
import type { ShapedGlyph, ShapingFont } from './harfbuzz.ts'

/** Words as a face sets them: their glyphs in order, each with the characters it stands for. */
export interface Run {
  readonly glyphs: readonly Glyph[]
  /** In font units. */
  readonly advance: number
}

/** A glyph that knows its characters. */
export interface Glyph extends ShapedGlyph {
  readonly characters: string
}

/** One face, which remembers what it has shaped. */
export interface OpenFace {
  readonly unitsPerEm: number
  has(character: string): boolean
  /** Printable words, with its near twin for a character that the face lacks, if it has one. */
  spelled(words: string): string
  /** Words as this face can set them: spelled, and with a box for every character it still lacks. */
  settable(words: string): string
  run(words: string, features: Features): Run
}

export function openFace({ unitsPerEm, has, shape }: ShapingFont): OpenFace {
  // Both boxes are drawn as a letter of their own, which PDF/UA wants: it forbids the font's "no glyph" glyph.
  const box = has('□') ? '□' : '◊'
  const spelled = (words: string) =>
    each(printable(words), character => (has(character) ? character : (nearTwin(character) ?? character)))
  const settable = (words: string) => each(spelled(words), character => (has(character) ? character : box))
  const shapers = once((features: Features) => {
    const shaped = wordByWord(text => withCharacters(text, shape(text, features)))
    return once((words: string) => shaped(settable(words)))
  })
  return {
    unitsPerEm,
    has,
    spelled,
    settable,
    run: (words, features) => shapers(features)(words),
  }
}

/** A character that looks and means nearly the same, for those that a face may well lack. */
export function nearTwin(character: string): string | undefined {
  return /\p{Zs}/u.test(character) ? ' ' : twins[character]
}

const twins: Readonly<Record<string, string>> = { '\u2010': '-', '\u2011': '-', '′': "'", '″': '"' }

function each(words: string, instead: (character: string) => string): string {
  return /^[\x20-\x7e]*$/.test(words) ? words : Array.from(words, instead).join('')
}

/**
 * Shapes words one at a time, each with the spaces beside it, and remembers them: a sheet's names are made
 * of few words. Kerning and ligatures in these faces reach no further than the space, which a test holds
 * against shaping the whole.
 */
function wordByWord(shapeText: (text: string) => readonly Glyph[]): (words: string) => Run {
  const remembered = once(shapeText)
  return words => {
    const parts = words.split(' ')
    const glyphs = parts.flatMap((part, index) => {
      const isLast = index === parts.length - 1
      const shaped = remembered(` ${part}${isLast ? '' : ' '}`)
      return shaped.slice(index === 0 ? 1 : 0, isLast ? undefined : -1)
    })
    return { glyphs, advance: glyphs.reduce((sum, { advance }) => sum + advance, 0) }
  }
}

// A glyph stands for the letters from its own to the next glyph's: several in a ligature, none for the second
// glyph of a letter that is set in two.
function withCharacters(text: string, glyphs: readonly ShapedGlyph[]): readonly Glyph[] {
  return glyphs.map((glyph, index) => ({
    ...glyph,
    characters: text.slice(glyph.from, glyphs[index + 1]?.from ?? text.length),
  }))
}
