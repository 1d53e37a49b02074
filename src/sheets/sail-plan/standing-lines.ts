import type { Mast, Rig, Shrouds, StandingRigging } from '../../rig/index.ts'
import { type SectionShape, sectionShapes } from './mast-shape.ts'
import { isSober, isSoberPoint } from './sober.ts'

/** One part of standing rigging, from aloft to below, in metres. */
export interface StandingLine {
  readonly from: StandingEnd
  readonly to: StandingEnd
}

interface StandingEnd {
  readonly x: number
  readonly z: number
}

const mostParts = 12

/** The parts of a stay or of a bank as the starboard profile shows them, foremost first; none without geometry. */
export function standingLines(item: StandingRigging, { masts }: Rig): readonly StandingLine[] {
  const { from, to } = item
  if (!from || !to || !isSoberPoint(from) || !isSoberPoint(to)) return []
  const line = { from: onDrawnMast(from, masts), to: onDrawnMast(to, masts) }
  return item.kind === 'stay' ? [line] : bank(line, item)
}

function bank({ from, to }: StandingLine, { apart, count }: Shrouds): readonly StandingLine[] {
  const step = apart !== undefined && isSober(apart) ? apart : 0
  return Array.from({ length: Math.max(1, Math.min(mostParts, count)) }, (_, i) => ({
    from,
    to: { x: to.x + i * step, z: to.z },
  }))
}

/** An upper section is drawn before its place, so what is made fast to it moves with it. */
function onDrawnMast(end: StandingEnd, masts: readonly Mast[]): StandingEnd {
  const near = masts
    .flatMap(mast => sectionShapes(mast))
    .filter(({ foot, head }) => end.z >= foot.z && end.z <= head.z)
    .map(section => axisAt(section, end.z))
    .filter(x => Math.abs(x - end.x) < reach)
  // Of the two spars in a doubling, a stay is drawn to the one nearer to where it says it is.
  const x = near.reduce<number | undefined>(
    (best, axis) => (best === undefined || Math.abs(axis - end.x) < Math.abs(best - end.x) ? axis : best),
    undefined,
  )
  return { x: x ?? end.x, z: end.z }
}

const reach = 0.7

/** Where a section's middle line stands at a height. */
export const axisAt = ({ foot, head }: SectionShape, z: number): number =>
  foot.x + ((head.x - foot.x) * (z - foot.z)) / (head.z - foot.z)
