import type { Mark, Point, TextMark } from '../../sheets/index.ts'
import { textMarks } from '../text-marks.ts'
import { textStart } from '../text-start.ts'

/**
 * The texts that the next in drawing order follows without a gap, as pieces of one run of words. Behind all others
 * whoever listens or copies needs a space.
 */
export function runningOn(marks: readonly Mark[]): ReadonlySet<TextMark> {
  const found = new Set<TextMark>()
  let last: TextMark | undefined
  for (const mark of textMarks(marks)) {
    if (last && isAt(textEnd(last), textStart(mark))) found.add(last)
    last = mark
  }
  return found
}

function textEnd(mark: TextMark): Point {
  const start = textStart(mark)
  const angle = ((mark.turn ?? 0) * Math.PI) / 180
  return { x: start.x + mark.width * Math.cos(angle), y: start.y - mark.width * Math.sin(angle) }
}

const isAt = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) < 0.05
