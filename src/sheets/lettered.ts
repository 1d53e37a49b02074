import type { Point, TextMark } from './sheet.ts'
import type { Ruler, Typeface } from './typeface.ts'

/** What of a text mark may be left out. */
export type Lettering = Partial<Pick<TextMark, 'id' | 'anchor' | 'turn' | 'halo'>>

/** Words as a mark, with the width the ruler gives them. */
export function lettered(
  ruler: Ruler,
  at: Point,
  words: string,
  type: Typeface,
  ink: string,
  lettering: Lettering = {},
): TextMark {
  return { kind: 'text', at, words, type, ink, width: ruler(words, type), ...lettering }
}
