import type { Font, Glyph, GlyphPosition } from 'fontkit'
import { printable } from '../words.ts'
import type { Features } from './features.ts'

/** Glyphs in their order, and for each how far it moves the pen, in font units. */
export interface Run {
  readonly glyphs: readonly Glyph[]
  readonly positions: readonly GlyphPosition[]
  readonly advance: number
}

/** One parsed face, which remembers what it has shaped. */
export interface OpenFace {
  readonly font: Font
  has(character: string): boolean
  /** Printable words, with its near twin for a character that the face lacks, if it has one. */
  spelled(words: string): string
  /** Words as this face can set them: spelled, and with a box for every character it still lacks. */
  settable(words: string): string
  run(words: string, features: Features): Run
}

export function openFace(font: Font): OpenFace {
  const characters = new Set(font.characterSet)
  const has = (character: string) => characters.has(character.codePointAt(0) as number)
  // Both boxes are drawn as a letter of their own, which PDF/UA wants: it forbids the font's "no glyph" glyph.
  const box = has('□') ? '□' : '◊'
  const spelled = (words: string) =>
    each(printable(words), character => (has(character) ? character : (nearTwin(character) ?? character)))
  const settable = (words: string) => each(spelled(words), character => (has(character) ? character : box))
  const shapers = new Map<Features, (words: string) => Run>()
  return {
    font,
    has,
    spelled,
    settable,
    run(words, features) {
      let shaper = shapers.get(features)
      if (!shaper) {
        shaper = wordByWord(text => shape(font, text, features))
        shapers.set(features, shaper)
      }
      return shaper(settable(words))
    },
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
 * of few words, and shaping is by far the slowest thing here. Kerning and ligatures in these faces reach no
 * further than the space, which a test holds against shaping the whole.
 */
function wordByWord(shapeText: (text: string) => Run): (words: string) => Run {
  const known = new Map<string, Run>()
  const remembered = (text: string) => {
    let run = known.get(text)
    if (!run) {
      run = shapeText(text)
      known.set(text, run)
    }
    return run
  }
  return words => {
    const parts = words.split(' ')
    const glyphs: Glyph[] = []
    const positions: GlyphPosition[] = []
    parts.forEach((part, index) => {
      const run = remembered(` ${part}${index < parts.length - 1 ? ' ' : ''}`)
      const end = index < parts.length - 1 ? run.glyphs.length - 1 : run.glyphs.length
      for (let i = index === 0 ? 1 : 0; i < end; i++) {
        glyphs.push(run.glyphs[i] as Glyph)
        positions.push(run.positions[i] as GlyphPosition)
      }
    })
    return { glyphs, positions, advance: positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0) }
  }
}

function shape(font: Font, text: string, features: Features): Run {
  // fontkit takes an object of switches too, though its types know only a list of features to turn on.
  const { glyphs, positions, advanceWidth } = font.layout(text, features as unknown as string[])
  return { glyphs, positions, advance: advanceWidth }
}
