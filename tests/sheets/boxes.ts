import { rect, stretches, stretchMeetsRect } from '../../src/sheets/plane.ts'
import type { Mark, Point, Sheet, TextMark } from '../../src/sheets/sheet.ts'
import { capHeight } from '../../src/sheets/typeface.ts'

/** Every mark of a sheet that is not a group, moved by the groups it stands in. */
export function flat(
  marks: readonly Mark[],
  by: Point = { x: 0, y: 0 },
): readonly Exclude<Mark, { kind: 'group' }>[] {
  return marks.flatMap(mark => {
    if (mark.kind !== 'group') return [mark]
    const offset = mark.offset ?? { x: 0, y: 0 }
    return flat(mark.marks, { x: by.x + offset.x, y: by.y + offset.y })
  })
}

/** The words of a sheet. */
export const texts = (sheet: Sheet): readonly TextMark[] =>
  flat(sheet.marks).flatMap(mark => (mark.kind === 'text' && mark.words !== '' ? [mark] : []))

/** Ids of all groups and marks. */
export const ids = (marks: readonly Mark[]): readonly string[] =>
  marks.flatMap(mark => [
    ...(mark.id === undefined ? [] : [mark.id]),
    ...(mark.kind === 'group' ? ids(mark.marks) : []),
  ])

export interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** The box of words from baseline to the height of capitals; turned words by quarter turns. */
export function boxOf(mark: TextMark): Box {
  const { at, width, turn = 0, anchor = 'start' } = mark
  const height = capHeight(mark.type)
  const from = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width
  if (turn === 90) return { left: at.x - height, right: at.x, top: at.y - from - width, bottom: at.y - from }
  if (turn === -90) return { left: at.x, right: at.x + height, top: at.y + from, bottom: at.y + from + width }
  return { left: at.x + from, right: at.x + from + width, top: at.y - height, bottom: at.y }
}

/** Pairs of words whose boxes overlap by more than a twentieth of a millimetre. */
export function overlaps(sheet: Sheet): readonly string[] {
  const all = texts(sheet).map(mark => ({ words: mark.words, box: boxOf(mark) }))
  return all.flatMap((a, index) =>
    all
      .slice(index + 1)
      .filter(b => boxesMeet(a.box, b.box))
      .map(b => `${a.words} / ${b.words}`),
  )
}

/** Whether two boxes overlap by more than a twentieth of a millimetre. */
export const boxesMeet = (a: Box, b: Box): boolean =>
  a.left < b.right - 0.05 && b.left < a.right - 0.05 && a.top < b.bottom - 0.05 && b.top < a.bottom - 0.05

/** Whether a run of points passes through a box by more than a tenth of a millimetre. */
export const runsThrough = (points: readonly Point[], { left, right, top, bottom }: Box): boolean =>
  stretches(points).some(stretch =>
    stretchMeetsRect(stretch, rect(left + 0.1, top + 0.1, right - 0.1, bottom - 0.1)),
  )
