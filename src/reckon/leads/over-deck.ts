import { type Metres, metres, type Point3, point3 } from '../../measure/index.ts'
import type { DeckThing, Line } from '../../rig/index.ts'
import type { Field } from './field.ts'
import type { Segment } from './segment.ts'
import { between, beyond } from './vector.ts'

/** A lead that passes over a thing on deck, or through it, and not along a boom. */
export interface OverDeck {
  readonly line: Line
  readonly thing: DeckThing
  /** The lowest point of the lead within the thing's outline. */
  readonly at: Point3
  /** That point over the thing's top: below zero where the lead goes through it. */
  readonly overTop: Metres
}

/** A lead higher than this over a thing's top is out of everybody's way. */
const outOfReach = 3

/** Every stretch of every lead within the outline of a thing on deck, seen from above; the lowest of each line. */
export function overDeckOf({ rig, strands, near, gathered }: Field): readonly OverDeck[] {
  return rig.deck.flatMap(thing => {
    const lowest = new Map<Line, Point3>()
    for (const i of near(outline(thing), 0)) {
      const strand = strands[i]
      const at = strand && lowestWithin(strand, thing)
      const before = lowest.get(strand?.line as Line)?.z ?? thing.top + outOfReach
      if (strand && at && at.z < before && !gathered.along(strand)) lowest.set(strand.line, at)
    }
    return [...lowest].map(([line, at]) => ({ line, thing, at, overTop: metres(at.z - thing.top) }))
  })
}

const outline = ({ x0, y0, x1, y1 }: DeckThing): Segment => ({
  from: point3(x0, y0, 0),
  to: point3(x1, y1, 0),
})

/** The lowest point of a stretch within an outline, where it crosses it: the stretch is clipped at each of its four sides. */
export function lowestWithin({ from, to }: Segment, { x0, y0, x1, y1 }: DeckThing): Point3 | undefined {
  const way = between(from, to)
  const spans = [span(from.x, way.x, x0, x1), span(from.y, way.y, y0, y1), [0, 1] as const]
  const start = Math.max(...spans.map(([first]) => first))
  const end = Math.min(...spans.map(([, last]) => last))
  if (!(start < end)) return undefined
  return beyond(from, way, way.z > 0 ? start : end)
}

/** From which share of the way to which it lies between two bounds. */
function span(from: number, way: number, low: number, high: number): readonly [number, number] {
  if (way === 0) return from > low && from < high ? [0, 1] : [1, 0]
  const [a, b] = [(low - from) / way, (high - from) / way]
  return [Math.min(a, b), Math.max(a, b)]
}
