import { lettered } from '../lettered.ts'
import type { Mark, Point } from '../sheet.ts'
import { millimetresPerPoint, type Ruler, type Typeface } from '../typeface.ts'
import { black, white } from './type.ts'

/** How wide the triangle of a caution is beside type of this size, in millimetres. */
export const cautionMarkWidth = (size: number): number => size * millimetresPerPoint * 1.18

/**
 * The sign of a caution, used for nothing else: a solid triangle with a white exclamation mark. `at` is the
 * left end of the baseline it stands on.
 */
export function cautionMark(at: Point, size: number): readonly Mark[] {
  const em = size * millimetresPerPoint
  const width = cautionMarkWidth(size)
  const middle = at.x + width / 2
  const foot = at.y + em * 0.09
  const top = foot - em * 0.98
  const round = em * 0.07
  const stroke = (y0: number, y1: number): Mark => ({
    kind: 'line',
    points: [
      { x: middle, y: y0 },
      { x: middle, y: y1 },
    ],
    pen: { ink: white, width: em * 0.13, cap: 'butt' },
  })
  return [
    {
      kind: 'line',
      points: [
        { x: middle, y: top + round },
        { x: at.x + width - round, y: foot - round },
        { x: at.x + round, y: foot - round },
      ],
      closed: true,
      fill: { ink: black },
      pen: { ink: black, width: round * 2, join: 'round' },
    },
    stroke(top + em * 0.34, top + em * 0.66),
    stroke(top + em * 0.73, top + em * 0.85),
  ]
}

/** The number of a caution beside its sign, for words that call on it. */
export function numberedCaution(number: number, at: Point, size: number, ruler: Ruler): readonly Mark[] {
  const x = at.x + numberAfter(size)
  return [...cautionMark(at, size), lettered(ruler, { x, y: at.y }, String(number), numberType(size), black)]
}

/** How wide a sign is with its number. */
export const numberedCautionWidth = (number: number, size: number, ruler: Ruler): number =>
  numberAfter(size) + ruler(String(number), numberType(size))

const numberAfter = (size: number): number => cautionMarkWidth(size) + size * millimetresPerPoint * 0.12
const numberType = (size: number): Typeface => ({ face: 'Fira Sans Condensed SemiBold', size })
