import { type Face, millimetresPerPoint, type Ruler } from '../../sheets/index.ts'
import { featuresOf } from './features.ts'
import type { OpenFace } from './open-face.ts'

/**
 * A ruler made from the fonts themselves: kerning, ligatures and tabular figures are in, and tracking is
 * added after every letter, the last one too. Widths are remembered for each face whatever the size.
 */
export function fontRuler(faces: (face: Face) => OpenFace): Ruler {
  const widths = new Map<string, Width>()
  return (words, type) => {
    const { face, size, tracking = 0 } = type
    const key = `${face}|${type.tabular ? 't' : ''}${tracking ? 's' : ''}|${words}`
    let width = widths.get(key)
    if (!width) {
      const { unitsPerEm, run } = faces(face)
      const { advance, glyphs } = run(words, featuresOf(type))
      width = { em: advance / unitsPerEm, letters: glyphs.length }
      widths.set(key, width)
    }
    return (width.em + width.letters * tracking) * size * millimetresPerPoint
  }
}

interface Width {
  readonly em: number
  readonly letters: number
}
