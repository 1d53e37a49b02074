import type { Mark, TextMark } from '../sheets/index.ts'

/** All texts among marks, in drawing order, those in groups with them. */
export function* textMarks(marks: readonly Mark[]): Generator<TextMark> {
  for (const mark of marks) {
    if (mark.kind === 'text') yield mark
    if (mark.kind === 'group') yield* textMarks(mark.marks)
  }
}
