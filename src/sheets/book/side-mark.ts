import { lettered } from '../lettered.ts'
import type { Mark, Point } from '../sheet.ts'
import { capHeight, millimetresPerPoint, type Ruler, type Typeface } from '../typeface.ts'
import { black, rule, smallest, white } from './type.ts'

/** Port and starboard, which never change; weather and lee, which change with the tack. */
export type SideMark = 'P' | 'S' | 'W' | 'L'

/** How wide the mark of a side is beside type of this size, in millimetres. */
export function sideMarkWidth(side: SideMark, size: number): number {
  const { square, point } = measures(size)
  return side === 'W' || side === 'L' ? square + point : square
}

/**
 * The mark of a side: fixed sides are squares, port open and starboard solid; changing sides are not square,
 * weather solid and pointed, lee open and round-bellied. `at` is the left end of the baseline.
 */
export function sideMark(side: SideMark, at: Point, size: number, ruler: Ruler): readonly Mark[] {
  const { height, square, point } = measures(size)
  const line = rule.frame
  const top = at.y - capHeight({ face: 'Fira Sans Condensed', size }) / 2 - height / 2
  const solid = side === 'S' || side === 'W'
  const inset = solid ? 0 : line / 2
  const box = { left: at.x + inset, top: top + inset, right: at.x + square, bottom: top + height - inset }
  const type: Typeface = { face: 'Fira Sans Condensed Bold', size: Math.max(smallest, size * 0.78) }
  const letterAt = { x: at.x + square / 2, y: top + height / 2 + capHeight(type) / 2 }
  const outline = outlines[side](box, point, inset)
  return [
    solid
      ? { kind: 'path', steps: outline, fill: { ink: black } }
      : { kind: 'path', steps: outline, fill: { ink: white }, pen: { ink: black, width: line } },
    lettered(ruler, letterAt, side, type, solid ? white : black, { anchor: 'middle' }),
  ]
}

interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

type Outline = (box: Box, point: number, inset: number) => Extract<Mark, { kind: 'path' }>['steps']

const square: Outline = ({ left, top, right, bottom }, _point, inset) => [
  ['M', left, top],
  ['L', right - inset, top],
  ['L', right - inset, bottom],
  ['L', left, bottom],
  ['Z'],
]

const pointed: Outline = ({ left, top, right, bottom }, point) => [
  ['M', left, top],
  ['L', right, top],
  ['L', right + point, (top + bottom) / 2],
  ['L', right, bottom],
  ['L', left, bottom],
  ['Z'],
]

// A quarter of a round takes 0.5523 of its radius for its handles.
const bellied: Outline = ({ left, top, right, bottom }, point, inset) => {
  const middle = (top + bottom) / 2
  const round = (bottom - top) / 2
  const reach = right + point - inset
  const from = reach - round
  const handle = round * 0.5523
  return [
    ['M', left, top],
    ['L', from, top],
    ['C', from + handle, top, reach, middle - handle, reach, middle],
    ['C', reach, middle + handle, from + handle, bottom, from, bottom],
    ['L', left, bottom],
    ['Z'],
  ]
}

const outlines: Readonly<Record<SideMark, Outline>> = { P: square, S: square, W: pointed, L: bellied }

// Squares stand a little higher than the capitals beside them, so that a letter of 8 pt has room in the smallest.
function measures(size: number) {
  const em = Math.max(size, 9) * millimetresPerPoint
  return { height: em * 0.96, square: em * 0.86, point: em * 0.24 }
}
