import { type Face, millimetresPerPoint, type PathStep, type Typeface } from '../../sheets/index.ts'
import { featuresOf } from './features.ts'
import type { OpenFace } from './open-face.ts'

/** The outlines of words in millimetres, the first letter's origin at 0,0, y down. */
export type Outlines = (words: string, type: Typeface) => readonly PathStep[]

/** Outlines from the fonts, for a halo: a drawing behind the words must not be words itself. */
export function glyphOutlines(faces: (face: Face) => OpenFace): Outlines {
  return (words, type) => {
    const { font, run } = faces(type.face)
    const { glyphs, positions } = run(words, featuresOf(type))
    const scale = (type.size * millimetresPerPoint) / font.unitsPerEm
    let pen = 0
    return glyphs.flatMap((glyph, index) => {
      const { xOffset = 0, yOffset = 0, xAdvance = 0 } = positions[index] ?? {}
      const left = (pen + xOffset) * scale
      pen += xAdvance + (type.tracking ?? 0) * font.unitsPerEm
      return steps(glyph.path.commands as readonly Command[], left, -yOffset * scale, scale)
    })
  }
}

interface Command {
  readonly command: string
  readonly args: readonly number[]
}

function steps(commands: readonly Command[], left: number, top: number, scale: number): PathStep[] {
  let from: readonly [number, number] = [0, 0]
  const at = (x: number, y: number) => [left + x * scale, top - y * scale] as const
  return commands.map(({ command, args }): PathStep => {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = args
    const [x, y] = from
    switch (command) {
      case 'moveTo':
        from = [a, b]
        return ['M', ...at(a, b)]
      case 'lineTo':
        from = [a, b]
        return ['L', ...at(a, b)]
      case 'quadraticCurveTo':
        from = [c, d]
        // The same curve as a cubic: each handle two thirds of the way to the one control point.
        return [
          'C',
          ...at(x + ((a - x) * 2) / 3, y + ((b - y) * 2) / 3),
          ...at(c + ((a - c) * 2) / 3, d + ((b - d) * 2) / 3),
          ...at(c, d),
        ]
      case 'bezierCurveTo':
        from = [e, f]
        return ['C', ...at(a, b), ...at(c, d), ...at(e, f)]
      default:
        return ['Z']
    }
  })
}
