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
  if (item.kind !== 'stay') return bank({ from: onDrawnMast(from, masts), to }, item)
  return [{ from: cutAtMast(from, to, masts), to: cutAtMast(to, from, masts) }]
}

function bank({ from, to }: StandingLine, { apart, count }: Shrouds): readonly StandingLine[] {
  const step = apart !== undefined && isSober(apart) ? apart : 0
  return Array.from({ length: Math.max(1, Math.min(mostParts, count)) }, (_, i) => ({
    from,
    to: { x: to.x + i * step, z: to.z },
  }))
}

/** An upper section is drawn before its place, so the shrouds and backstays made fast to it move with it. */
function onDrawnMast(end: StandingEnd, masts: readonly Mast[]): StandingEnd {
  const section = sectionAt(end, masts)
  return section ? { x: axisAt(section, end.z), z: end.z } : end
}

/** A stay keeps its line, for a sail may be set on it: it only ends where that line meets the mast as drawn. */
function cutAtMast(end: StandingEnd, other: StandingEnd, masts: readonly Mast[]): StandingEnd {
  const section = sectionAt(end, masts)
  const drop = end.z - other.z
  if (!section || other.x === end.x) return end
  const slope = drop / (end.x - other.x)
  const lean = (section.head.x - section.foot.x) / (section.head.z - section.foot.z)
  const axis = axisAt(section, end.z)
  // Both lines through the height of the end: x = axis + lean (z - z0), and z = z0 + slope (x - x0).
  const x = (axis - lean * slope * end.x) / (1 - lean * slope)
  const isNear = Number.isFinite(x) && Math.abs(x - end.x) < reach
  return isNear ? { x, z: end.z + slope * (x - end.x) } : end
}

/** The section of a mast that stands nearest to a point; in a doubling, the nearer of the two. */
function sectionAt(end: StandingEnd, masts: readonly Mast[]): SectionShape | undefined {
  const off = (section: SectionShape) => Math.abs(axisAt(section, end.z) - end.x)
  return masts
    .flatMap(mast => sectionShapes(mast))
    .filter(({ foot, head }) => end.z >= foot.z && end.z <= head.z)
    .filter(section => off(section) < reach)
    .reduce<SectionShape | undefined>(
      (best, section) => (best === undefined || off(section) < off(best) ? section : best),
      undefined,
    )
}

const reach = 0.7

/** Where a section's middle line stands at a height. */
export const axisAt = ({ foot, head }: SectionShape, z: number): number =>
  foot.x + ((head.x - foot.x) * (z - foot.z)) / (head.z - foot.z)
