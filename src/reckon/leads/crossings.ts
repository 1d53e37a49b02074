import { type Metres, metres, type Point3, type Radians } from '../../measure/index.ts'
import type { Line } from '../../rig/index.ts'
import type { Field } from './field.ts'
import { approachWithin, crossingAngle } from './segment.ts'
import { type RunningStrand, type StandingStrand, standingStrands } from './strand.ts'

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
export function crossingsOf({ strands, near, gathered, thickest }: Field): readonly Crossing[] {
  return strands.flatMap((strand, i) => {
    if (!strand.isFixed) return []
    const isLater = (j: number) => j > i && strands[j]?.isFixed === true && strands[j]?.line !== strand.line
    return near(strand, reach + 2 * thickest, isLater).flatMap(j => {
      const other = strands[j]
      const passing = other && passingOf(strand, other)
      if (!passing || gathered.at(passing.at) || gathered.along(strand) || gathered.along(other)) return []
      return { line: strand.line, other: other.line, ...passing }
    })
  })
}

/** Where running lines cross the standing rigging between their pins and their last blocks. */
export function chafesOf({ rig, strands, near, gathered, thickest }: Field): readonly Chafe[] {
  return standingStrands(rig).flatMap(part =>
    near(part, reach + part.radius + thickest).flatMap(i => {
      const strand = strands[i]
      const passing = strand?.isFixed && passingOf(strand, part)
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
  const thickness = strand.radius + other.radius
  const near = approachWithin(reach + thickness, strand, other)
  if (!near || near.fromEnd < besideEnd) return undefined
  const angle = crossingAngle(strand, other)
  if (angle < alongside) return undefined
  return { at: near.at, clear: metres(Math.max(0, near.distance - thickness)), angle }
}

/** As high as a hand reaches from the rail, trucks and fairlead boards hold the leads off shrouds: common practice, no source. */
const besideFoot = 2

const isBesideFoot = ({ part, from, to }: StandingStrand, point: Point3): boolean =>
  part.kind !== 'stay' && point.z - Math.min(from.z, to.z) < besideFoot
