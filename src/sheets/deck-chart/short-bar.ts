import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import type { Mark, Point } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import { chartType } from './type.ts'

const room = 29
const high = 1.3

/** A scale bar for the narrow title column: cells in turn solid and open, the one before zero cut in five. */
export function shortBar(scale: number, inFeet: boolean, at: Point, ruler: Ruler): readonly Mark[] {
  const unit = ((inFeet ? 0.3048 : 1) * 1000) / scale
  const step = steps.find(each => each * unit >= 5.5) ?? 1
  const cell = step * unit
  const count = Math.max(2, Math.min(4, Math.floor(room / cell)))
  const fine = Array.from({ length: 5 }, (_, index) =>
    block(at, (index * cell) / 5, ((index + 1) * cell) / 5, index % 2 === 0),
  )
  const coarse = Array.from({ length: count - 1 }, (_, index) =>
    block(at, (index + 1) * cell, (index + 2) * cell, index % 2 === 1),
  )
  const numbers = Array.from({ length: count + 1 }, (_, index) =>
    lettered(
      ruler,
      { x: at.x + index * cell, y: at.y - 1.1 },
      printed(Math.abs(index - 1) * step),
      chartType.deckNumber,
      ink.ink,
      { anchor: 'middle' },
    ),
  )
  const words = lettered(
    ruler,
    { x: at.x + count * cell + 2, y: at.y + high },
    inFeet ? 'ft' : 'm',
    chartType.note,
    ink.ink,
  )
  return [...fine, ...coarse, ...numbers, words]
}

const steps = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500]

const printed = (value: number): string => String(Math.round(value * 10) / 10)

function block({ x, y }: Point, from: number, to: number, isSolid: boolean): Mark {
  const points = [
    { x: x + from, y },
    { x: x + to, y },
    { x: x + to, y: y + high },
    { x: x + from, y: y + high },
  ]
  const pen = { ink: ink.ink, width: weight.b, join: 'miter' as const }
  return { kind: 'line', points, closed: true, pen, ...(isSolid ? { fill: { ink: ink.ink } } : {}) }
}
