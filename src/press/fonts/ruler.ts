import type { Font } from 'fontkit'
import { type Face, millimetresPerPoint, type Ruler } from '../../sheets/index.ts'
import { printable } from '../words.ts'
import { shape } from './shape.ts'

/**
 * A ruler made from the fonts themselves: kerning, ligatures and tabular figures are in, and tracking is
 * added after every letter, the last one too. Widths are remembered for each face whatever the size.
 */
export function fontRuler(font: (face: Face) => Font): Ruler {
  const widths = new Map<string, { readonly em: number; readonly letters: number }>()
  return (words, { face, size, tracking = 0, tabular = false }) => {
    const key = `${face}|${tabular ? 't' : ''}${tracking ? 's' : ''}|${words}`
    let width = widths.get(key)
    if (!width) {
      const run = shape(font(face), printable(words), { tabular, tracking })
      width = { em: run.advanceWidth / font(face).unitsPerEm, letters: run.glyphs.length }
      widths.set(key, width)
    }
    return (width.em + width.letters * tracking) * size * millimetresPerPoint
  }
}
