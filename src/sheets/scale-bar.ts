import { ink, weight } from './ink.ts'
import { lettered } from './lettered.ts'
import { cornersOf, rect } from './plane.ts'
import { plateType } from './plate-type.ts'
import type { Mark, Point } from './sheet.ts'
import type { Ruler } from './typeface.ts'

/** What a scale bar counts in: the word beside it and its length in metres. */
export interface BarUnit {
  readonly words: string
  readonly metres: number
}

export const metresOnBar: BarUnit = { words: 'metres', metres: 1 }
export const feetOnBar: BarUnit = { words: 'feet', metres: 0.3048 }

/** Where a bar goes, and how much paper it may take. */
export interface BarPlace {
  readonly at: Point
  readonly width: number
}

/**
 * A scale bar: cells in turn solid and open, the cell before zero cut in five. `at` is the left end of its
 * upper edge; numbers stand above it, the unit beside it. It never takes more than the width.
 */
export function scaleBar(scale: number, unit: BarUnit, { at, width }: BarPlace, ruler: Ruler): Mark {
  const unitWidth = ruler(unit.words, plateType.barUnit) + 2.6
  const { step, cells } = division(scale, unit, width - unitWidth)
  const cell = (step * unit.metres * 1000) / scale
  const fine = Array.from({ length: 5 }, (_, i) => ({ from: (i * cell) / 5, to: ((i + 1) * cell) / 5 }))
  const coarse = Array.from({ length: cells }, (_, i) => ({ from: (i + 1) * cell, to: (i + 2) * cell }))
  const end = (cells + 1) * cell
  return {
    kind: 'group',
    id: 'scale-bar',
    title: `Scale 1 : ${scale}`,
    marks: [
      ...[...fine, ...coarse].map(({ from, to }, i) => block(at, from, to, i % 2 === 0)),
      ...numbers(step, cells).map(({ value, cellsAlong }) =>
        lettered(ruler, { x: at.x + cellsAlong * cell, y: at.y - 1.5 }, value, plateType.barNumber, ink.ink, {
          anchor: 'middle',
        }),
      ),
      lettered(ruler, { x: at.x + end + 2.6, y: at.y + barHeight }, unit.words, plateType.barUnit, ink.ink),
    ],
  }
}

const barHeight = 1.3
/** A cell wide enough to measure from, and narrow enough that a bar has a few. */
const leastCell = 12
const mostCells = 5

/** The step of a cell in its unit (1, 2 or 5 of a power of ten) and the cells after zero that the width has room for. */
function division(scale: number, unit: BarUnit, width: number): { step: number; cells: number } {
  const least = (leastCell * scale) / (1000 * unit.metres)
  const power = 10 ** Math.floor(Math.log10(least))
  const step = [1, 2, 5, 10].map(n => n * power).find(n => n >= least * 0.999) ?? 10 * power
  const cell = (step * unit.metres * 1000) / scale
  return { step, cells: Math.max(1, Math.min(mostCells, Math.floor(width / cell) - 1)) }
}

function numbers(step: number, cells: number): readonly { value: string; cellsAlong: number }[] {
  const after = Array.from({ length: cells + 1 }, (_, i) => ({ value: plain(i * step), cellsAlong: i + 1 }))
  return [{ value: plain(step), cellsAlong: 0 }, ...after]
}

const plain = (n: number): string => String(Math.round(n * 1000) / 1000)

function block({ x, y }: Point, from: number, to: number, isSolid: boolean): Mark {
  const points = cornersOf(rect(x + from, y, x + to, y + barHeight))
  const pen = { ink: ink.ink, width: weight.a }
  return isSolid
    ? { kind: 'line', points, closed: true, pen, fill: { ink: ink.ink } }
    : { kind: 'line', points, closed: true, pen }
}
