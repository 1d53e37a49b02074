import { type Metres, metres, type Point3, type Radians } from '../../measure/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import { gatheredBy } from './gathered.ts'
import { planIndex } from './plan-index.ts'
import { approach, crossingAngle } from './segment.ts'
import { fixedStrands, type RunningStrand, type StandingStrand, standingStrands } from './strand.ts'

/** Where a line passes another line or a part of the standing rigging. */
interface Passing {
  readonly at: Point3
  /** From rope to rope; nothing where they touch. */
  readonly clear: Metres
  readonly angle: Radians
}

/** Two running lines that pass across each other, the earlier in the text first. */
export interface Crossing extends Passing {
  readonly line: Line
  readonly other: Line
}

/** A running line that passes across a shroud, a backstay or a stay. */
export interface Chafe extends Passing {
  readonly line: Line
  readonly part: StandingStrand
}

/** Passings wider than this, from rope to rope, are not looked at: a hand's breadth and a half. */
export const reach = metres(0.15)

/** Where running lines cross each other between their pins and their last blocks; `fouls.md` says what is left out. */
export function crossingsOf(rig: Rig): readonly Crossing[] {
  const gathered = gatheredBy(rig)
  const strands = rig.lines.flatMap(fixedStrands)
  const near = planIndex(strands, reach + 2 * thickest(strands))
  return strands.flatMap((strand, i) =>
    near(strand).flatMap(j => {
      const other = strands[j]
      if (j <= i || !other || other.line === strand.line) return []
      const passing = passingOf(strand, other)
      if (!passing || gathered.at(passing.at) || gathered.along(strand) || gathered.along(other)) return []
      return { line: strand.line, other: other.line, ...passing }
    }),
  )
}

/** Where running lines cross the standing rigging between their pins and their last blocks. */
export function chafesOf(rig: Rig): readonly Chafe[] {
  const gathered = gatheredBy(rig)
  const parts = standingStrands(rig)
  const near = planIndex(parts, reach + 2 * thickest(parts))
  return rig.lines.flatMap(fixedStrands).flatMap(strand =>
    near(strand).flatMap(i => {
      const part = parts[i]
      const passing = part && passingOf(strand, part)
      if (!passing || gathered.at(passing.at) || isBesideFoot(part, passing.at)) return []
      return { line: strand.line, part, ...passing }
    }),
  )
}

/** Nearer than this to a block, a pin or an end, leads are gathered by it: common practice, no source. */
const besideEnd = 0.5

/** At a lesser angle ropes run alongside, through the same fairleads or seized: 10 degrees, common practice, no source. */
const alongside = (10 * Math.PI) / 180

function passingOf(strand: RunningStrand, other: RunningStrand | StandingStrand): Passing | undefined {
  const { distance, at, fromEnd } = approach(strand, other)
  const clear = metres(Math.max(0, distance - strand.radius - other.radius))
  if (clear >= reach || fromEnd < besideEnd) return undefined
  const angle = crossingAngle(strand, other)
  return angle < alongside ? undefined : { at, clear, angle }
}

/** As high as a hand reaches from the rail, trucks and fairlead boards hold the leads off shrouds: common practice, no source. */
const besideFoot = 2

const isBesideFoot = ({ part, from, to }: StandingStrand, point: Point3): boolean =>
  part.kind !== 'stay' && point.z - Math.min(from.z, to.z) < besideFoot

const thickest = (strands: readonly { readonly radius: Metres }[]): number =>
  strands.reduce((most, { radius }) => Math.max(most, radius), 0)
