import { type Face, millimetresPerPoint, type Ruler } from '../../sheets/index.ts'
import { once } from '../once.ts'
import { type Features, featuresOf } from './features.ts'
import type { OpenFace } from './open-face.ts'

/**
 * A ruler made from the fonts themselves: kerning, ligatures and tabular figures are in, and tracking is
 * added after every letter, the last one too. Widths are remembered for each face whatever the size.
 */
export function fontRuler(faces: (face: Face) => OpenFace): Ruler {
  const widths = once((face: Face) =>
    once((features: Features) => {
      const { unitsPerEm, run } = faces(face)
      return once((words: string): Width => {
        const { advance, glyphs } = run(words, features)
        return { em: advance / unitsPerEm, letters: glyphs.length }
      })
    }),
  )
  return (words, type) => {
    const { face, size, tracking = 0 } = type
    const { em, letters } = widths(face)(featuresOf(type))(words)
    return (em + letters * tracking) * size * millimetresPerPoint
  }
}

interface Width {
  readonly em: number
  readonly letters: number
}
