import type { PathStep } from '../../sheets/index.ts'

/** A step of a glyph's outline as fontkit gives it: in font units, y up. */
export interface Command {
  readonly command: string
  readonly args: readonly number[]
}

/** A glyph's outline in millimetres, y down, its origin at `left`, `top`. */
export function outline(commands: readonly Command[], left: number, top: number, scale: number): PathStep[] {
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
