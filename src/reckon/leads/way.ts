import {
  type Figure,
  known,
  type Metres,
  metres,
  point3,
  type Radians,
  unknown,
} from '../../measure/index.ts'
import type { LeadPoint, Line } from '../../rig/index.ts'
import { angleBetween, between, lengthOf } from './vector.ts'

/** A line in space, from its pin outward. */
export interface Way {
  /** From the pin to the last lead before the load; nothing where the line goes straight to it. */
  readonly lead: Metres
  /** From there to the load, as the text places it. */
  readonly last: Metres
  /** At each lead between pin and load. */
  readonly turns: readonly Turn[]
  /** How far the line leans where it leaves its pin: nothing when it goes straight up, half a turn straight down. */
  readonly lean: Radians
}

/** How far a line turns at a lead: nothing when it goes straight on, half a turn when it comes back upon itself. */
export interface Turn {
  readonly what: string
  readonly at: LeadPoint['at']
  readonly turn: Radians
}

/** The way of a line through the points of its lead. Unknown where the text leaves a point out. */
export function wayOf(line: Line): Figure<Way> {
  const { lead: points, leadUnknown } = line
  const end = points.at(-1)
  if (line.lifted !== undefined) return unknown('It is sent down.')
  if (leadUnknown || !end || points.length < 2)
    return unknown(asSentence(leadUnknown ?? 'its lead is not given'))
  const steps = points.slice(1).map((point, i) => between((points[i] ?? point).at, point.at))
  const lengths = steps.map(lengthOf)
  const last = lengths.at(-1) ?? 0
  const lean = steps[0] && angleBetween(steps[0], upward)
  if (lean === undefined) return unknown('Its first lead is where it belays.')
  return known({
    lead: metres(lengths.slice(0, -1).reduce((sum, length) => sum + length, 0)),
    last: metres(last),
    turns: points.slice(1, -1).flatMap((point, i) => turnAt(point, steps[i], steps[i + 1])),
    lean,
  })
}

const upward = point3(0, 0, 1)

function turnAt(
  point: LeadPoint,
  before: LeadPoint['at'] | undefined,
  after: LeadPoint['at'] | undefined,
): Turn[] {
  const turn = before && after && angleBetween(before, after)
  return turn === undefined ? [] : [{ what: point.what, at: point.at, turn }]
}

const asSentence = (because: string): string => `${because.charAt(0).toUpperCase()}${because.slice(1)}.`
