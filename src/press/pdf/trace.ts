import type { Mark, PathStep } from '../../sheets/index.ts'
import { round } from '../round.ts'
import { finely } from './finely.ts'

/** The operators that trace a path without inking it. */
export function tracedPath(steps: readonly PathStep[]): string {
  return steps
    .map(([letter, ...numbers]) => `${numbers.map(round).join(' ')} ${operators[letter]}`)
    .join('\n')
}

const operators: Readonly<Record<PathStep[0], string>> = { M: 'm', L: 'l', C: 'c', Z: 'h' }

/** The same for a run of straight stretches. */
export function tracedLine({ points, closed = false }: Extract<Mark, { kind: 'line' }>): string {
  const places = points.map(({ x, y }, index) => `${round(x)} ${round(y)} ${index === 0 ? 'm' : 'l'}`)
  return (closed ? [...places, 'h'] : places).join('\n')
}

/** The same for a circle, in four curves. */
export function tracedCircle(x: number, y: number, radius: number): string {
  const handle = radius * handleOfQuarter
  const curve = (...numbers: readonly number[]) => `${numbers.map(finely).join(' ')} c`
  const [left, top, right, bottom] = [x - radius, y - radius, x + radius, y + radius]
  return [
    `${finely(left)} ${finely(y)} m`,
    curve(left, y - handle, x - handle, top, x, top),
    curve(x + handle, top, right, y - handle, right, y),
    curve(right, y + handle, x + handle, bottom, x, bottom),
    curve(x - handle, bottom, left, y + handle, left, y),
    'h',
  ].join('\n')
}

// How far the handles of a quarter of a circle stand from its ends, as a share of the radius.
const handleOfQuarter = (4 * (Math.SQRT2 - 1)) / 3
