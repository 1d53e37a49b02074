import { ink } from '../ink.ts'
import { lettered } from '../lettered.ts'
import { type Rect, rect } from '../plane.ts'
import type { Mark, Point } from '../sheet.ts'
import { capHeight, type Ruler, type Typeface } from '../typeface.ts'

/** Lettering in one of its places, and the room it takes there. */
export interface Lettered {
  readonly box: Rect
  readonly marks: readonly Mark[]
}

/** The middle of a rectangle. */
export const middleOfRect = ({ left, right, top, bottom }: Rect): Point => ({
  x: (left + right) / 2,
  y: (top + bottom) / 2,
})

/** Words level, with their middle at a point. */
export function level(words: string, middle: Point, type: Typeface, ruler: Ruler, halo?: string): Lettered {
  const width = ruler(words, type)
  const cap = capHeight(type)
  const at = { x: middle.x, y: middle.y + cap / 2 }
  return {
    box: rect(middle.x - width / 2, middle.y - cap / 2 - 0.5, middle.x + width / 2, middle.y + cap / 2 + 0.7),
    marks: [
      lettered(ruler, at, words, type, ink.ink, {
        anchor: 'middle',
        ...(halo ? { halo: { width: 1.2, ink: halo } } : {}),
      }),
    ],
  }
}
