import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import type { Mark, PathStep } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import type { StripPlan } from './plan.ts'
import { headType } from './type.ts'

/**
 * Boxes to write in, under every place alike: mark, name, deed and what is eased. Nothing of them tells what
 * belongs there, neither a width nor a line's weight, nor which places are free.
 */
export function blankBoxes(
  { columns, pitch, heights, scale }: StripPlan,
  numbers: readonly string[],
  ruler: Ruler,
): readonly Mark[] {
  const [name, does, ease] = heights.rows
  const wide = Math.min(pitch - 1.6, 60)
  const markHalf = Math.min(wide, 10 * scale) / 2
  const markFoot = heights.mark + 7.8 * scale
  const top = heights.mark - 1.9 * scale
  return columns.flatMap((x, index) => {
    const box = (from: number, to: number, half = wide / 2) => rounded(x - half, from, x + half, to)
    return [
      box(top, markFoot, markHalf),
      box(markFoot + 2.3 * scale, name - 1.8),
      box(name + 1, does - 1.8),
      box(does + 1, ease - 1.8),
      lettered(ruler, { x, y: name - 4.4 }, numbers[index] ?? '', headType.foot, ink.rig, {
        anchor: 'middle',
      }),
    ]
  })
}

function rounded(left: number, top: number, right: number, foot: number): Mark {
  const r = 1
  const bend = r * 0.45
  const steps: readonly PathStep[] = [
    ['M', left + r, top],
    ['L', right - r, top],
    ['C', right - bend, top, right, top + bend, right, top + r],
    ['L', right, foot - r],
    ['C', right, foot - bend, right - bend, foot, right - r, foot],
    ['L', left + r, foot],
    ['C', left + bend, foot, left, foot - bend, left, foot - r],
    ['L', left, top + r],
    ['C', left, top + bend, left + bend, top, left + r, top],
    ['Z'],
  ]
  return { kind: 'path', steps, pen: { ink: ink.ink, width: weight.b } }
}
