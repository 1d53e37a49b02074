import { type Metres, metres, type Point3, point3 } from '../../measure/index.ts'
import type { Line, Rig, Shrouds, StandingRigging } from '../../rig/index.ts'
import type { Segment } from './segment.ts'

/** One stretch of a running line, from a point of its lead to the next. */
export interface RunningStrand extends Segment {
  readonly line: Line
  /** Between the pin and the last block: beyond it, a line goes where its load goes. */
  readonly isFixed: boolean
  readonly radius: Metres
}

/** One part of the standing rigging: a stay, or one shroud of a bank. */
export interface StandingStrand extends Segment {
  readonly part: StandingRigging
  /** 'fore stay', 'fore shrouds, port, the third'. */
  readonly name: string
  readonly radius: Metres
}

/** Every stretch of a line's lead, as far as the text gives it. */
export const strandsOf = (line: Line): readonly RunningStrand[] =>
  line.lead.slice(1).flatMap((to, i) => {
    const from = line.lead[i]
    const radius = metres((line.rope?.diameter ?? 0) / 2)
    return from ? [{ line, isFixed: i + 2 < line.lead.length, from: from.at, to: to.at, radius }] : []
  })

/** Every part of the standing rigging that the text places. */
export const standingStrands = ({ standing }: Pick<Rig, 'standing'>): readonly StandingStrand[] =>
  standing.flatMap(part => {
    const { from, to } = part
    if (!from || !to) return []
    const radius = metres((part.diameter ?? 0) / 2)
    return part.kind === 'stay' ? [{ part, name: part.name, from, to, radius }] : bank(part, from, to, radius)
  })

/** No bank has more parts than this: a slip of the pen must not be reckoned for ever. */
const most = 24

/** Shrouds stand with their heads together and their feet apart. */
function bank(part: Shrouds, from: Point3, to: Point3, radius: Metres): readonly StandingStrand[] {
  return (['port', 'starboard'] as const).flatMap(side =>
    Array.from({ length: Math.min(part.count, most) }, (_, i) => ({
      part,
      name: `${part.name}, ${side}${part.count > 1 ? `, number ${i + 1}` : ''}`,
      from: onSide(from, side),
      to: onSide(point3(to.x + i * (part.apart ?? 0), to.y, to.z), side),
      radius,
    })),
  )
}

const onSide = (point: Point3, side: 'port' | 'starboard'): Point3 =>
  point3(point.x, side === 'port' ? -point.y : point.y, point.z)
