import { type Group, type Mark, millimetresPerPoint, type Point, type TextMark } from '../sheets/index.ts'
import { textStart } from './text-start.ts'

/** An upright box in millimetres. */
export interface Bounds {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** The box that holds what is seen of the marks, lines with their full width; undefined if nothing is. */
export function boundsOf(marks: readonly Mark[]): Bounds | undefined {
  return marks.map(markBounds).reduce(joined, undefined)
}

function markBounds(mark: Mark): Bounds | undefined {
  switch (mark.kind) {
    case 'line':
      return grown(around(mark.points), (mark.pen?.width ?? 0) / 2)
    case 'path':
      // The handles of a curve hold it between them: wide enough, and never too narrow.
      return grown(around(mark.steps.flatMap(([, ...numbers]) => pairs(numbers))), (mark.pen?.width ?? 0) / 2)
    case 'circle':
      return grown(around([mark.at]), mark.radius + (mark.pen?.width ?? 0) / 2)
    case 'text':
      return grown(around(textCorners(mark)), (mark.halo?.width ?? 0) / 2)
    case 'group':
      return groupBounds(mark)
    default:
      return never(mark)
  }
}

function groupBounds({ marks, clip, offset = { x: 0, y: 0 } }: Group): Bounds | undefined {
  const all = boundsOf(marks)
  const window = clip && around(clip.flatMap(([, ...numbers]) => pairs(numbers)))
  const seen = all && window ? common(all, window) : all
  return seen && moved(seen, offset)
}

// From the foot of a "g" to the top of an accented capital, in any of the faces.
function textCorners(mark: TextMark): readonly Point[] {
  const em = mark.type.size * millimetresPerPoint
  const { x, y } = textStart(mark)
  const angle = ((mark.turn ?? 0) * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const corners = [0, mark.width].flatMap(along => [0.95 * em, -0.3 * em].map(up => [along, up] as const))
  return corners.map(([along, up]) => ({ x: x + along * cos - up * sin, y: y - along * sin - up * cos }))
}

function around(points: readonly Point[]): Bounds | undefined {
  if (points.length === 0) return undefined
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)]
  const least = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b))
  const most = (values: readonly number[]) => values.reduce((a, b) => Math.max(a, b))
  return { left: least(xs), top: least(ys), right: most(xs), bottom: most(ys) }
}

function pairs(numbers: readonly number[]): readonly Point[] {
  return numbers.flatMap((x, index) => (index % 2 === 0 ? [{ x, y: numbers[index + 1] as number }] : []))
}

function grown(box: Bounds | undefined, by: number): Bounds | undefined {
  return box && { left: box.left - by, top: box.top - by, right: box.right + by, bottom: box.bottom + by }
}

function moved({ left, top, right, bottom }: Bounds, { x, y }: Point): Bounds {
  return { left: left + x, top: top + y, right: right + x, bottom: bottom + y }
}

function joined(a: Bounds | undefined, b: Bounds | undefined): Bounds | undefined {
  if (!a || !b) return a ?? b
  return {
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
  }
}

function common(a: Bounds, b: Bounds): Bounds | undefined {
  const box = {
    left: Math.max(a.left, b.left),
    top: Math.max(a.top, b.top),
    right: Math.min(a.right, b.right),
    bottom: Math.min(a.bottom, b.bottom),
  }
  return box.left < box.right && box.top < box.bottom ? box : undefined
}

function never(mark: never): never {
  throw new Error(`No bounds known for ${JSON.stringify(mark)}`)
}
