import { capHeight, type Group, type Mark, type Point, type TextMark } from '../../src/sheets/index.ts'
import { type LabelBox, labelCorners } from '../../src/sheets/label-box.ts'
import { turned } from '../../src/sheets/plane.ts'

/** A mark with the ids of the groups it stands in, outermost first. */
export interface Nested<Kind extends Mark = Mark> {
  readonly mark: Kind
  readonly within: readonly string[]
}

/** Every mark of a sheet, groups included, in drawing order. */
export function allMarks(marks: readonly Mark[], within: readonly string[] = []): readonly Nested[] {
  return marks.flatMap(mark => {
    const own: Nested = { mark, within }
    if (mark.kind !== 'group') return [own]
    return [own, ...allMarks(mark.marks, mark.id === undefined ? within : [...within, mark.id])]
  })
}

export const groupsOf = (marks: readonly Mark[]): readonly Group[] =>
  allMarks(marks).flatMap(({ mark }) => (mark.kind === 'group' ? [mark] : []))

export const textsOf = (marks: readonly Mark[]): readonly Nested<TextMark>[] =>
  allMarks(marks).flatMap(({ mark, within }) => (mark.kind === 'text' ? [{ mark, within }] : []))

/** The room of a text's letters, from the baseline to the height of its capitals. */
export function boxOf({ at, width, type, anchor, turn = 0 }: TextMark): LabelBox {
  const height = capHeight(type)
  const start = anchor === 'end' ? -width : anchor === 'middle' ? -width / 2 : 0
  const angle = (-turn * Math.PI) / 180
  const off = turned({ x: start + width / 2, y: -height / 2 }, angle)
  return { middle: { x: at.x + off.x, y: at.y + off.y }, width, height, angle }
}

export const cornersOfText = (text: TextMark): readonly Point[] => labelCorners(boxOf(text))

/** Every number of a mark that says where it stands. */
export function numbersOf(mark: Mark): readonly number[] {
  switch (mark.kind) {
    case 'line':
      return mark.points.flatMap(({ x, y }) => [x, y])
    case 'path':
      return mark.steps.flatMap(step => step.slice(1) as number[])
    case 'circle':
      return [mark.at.x, mark.at.y, mark.radius]
    case 'text':
      return [mark.at.x, mark.at.y, mark.width, mark.turn ?? 0]
    case 'group':
      return []
  }
}
