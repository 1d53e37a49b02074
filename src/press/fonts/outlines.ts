import type { Font } from 'fontkit'
import { type Face, millimetresPerPoint, type PathStep, type Typeface } from '../../sheets/index.ts'
import { printable } from '../words.ts'
import { shape } from './shape.ts'

/** The outlines of words in millimetres, the first letter's origin at 0,0, y down. */
export type Outlines = (words: string, type: Typeface) => readonly PathStep[]

/** Outlines from the fonts, for a halo: a drawing behind the words must not be words itself. */
export function glyphOutlines(font: (face: Face) => Font): Outlines {
  return (words, type) => {
    const { unitsPerEm } = font(type.face)
    const run = shape(font(type.face), printable(words), type)
    const scale = (type.size * millimetresPerPoint) / unitsPerEm
    let pen = 0
    return run.glyphs.flatMap((glyph, index) => {
      const place = run.positions[index]
      const left = (pen + (place?.xOffset ?? 0)) * scale
      pen += (place?.xAdvance ?? 0) + (type.tracking ?? 0) * unitsPerEm
      return steps(glyph.path.commands as readonly Command[], left, -(place?.yOffset ?? 0) * scale, scale)
    })
  }
}

interface Command {
  readonly command: string
  readonly args: readonly number[]
}

function steps(commands: readonly Command[], left: number, top: number, scale: number): PathStep[] {
  let [x, y] = [0, 0]
  const at = (a: number, b: number) => [left + a * scale, top - b * scale] as const
  return commands.map(({ command, args }): PathStep => {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = args
    const from = [x, y] as const
    const to = command === 'quadraticCurveTo' ? [c, d] : command === 'bezierCurveTo' ? [e, f] : [a, b]
    ;[x, y] = to as [number, number]
    switch (command) {
      case 'moveTo':
        return ['M', ...at(a, b)]
      case 'lineTo':
        return ['L', ...at(a, b)]
      case 'quadraticCurveTo':
        // The same curve as a cubic: each handle two thirds of the way to the one control point.
        return [
          'C',
          ...at(from[0] + ((a - from[0]) * 2) / 3, from[1] + ((b - from[1]) * 2) / 3),
          ...at(c + ((a - c) * 2) / 3, d + ((b - d) * 2) / 3),
          ...at(c, d),
        ]
      case 'bezierCurveTo':
        return ['C', ...at(a, b), ...at(c, d), ...at(e, f)]
      default:
        return ['Z']
    }
  })
}
