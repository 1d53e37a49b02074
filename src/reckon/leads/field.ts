import type { Rig } from '../../rig/index.ts'
import { type Gathered, gatheredBy } from './gathered.ts'
import { type Near, planIndex } from './plan-index.ts'
import { type RunningStrand, strandsOf } from './strand.ts'

/** All stretches of all leads of a rig, found by their places, and where they are held in order. */
export interface Field {
  readonly rig: Rig
  readonly strands: readonly RunningStrand[]
  /** Numbers of the stretches within a reach of another, seen from above. */
  readonly near: Near
  readonly gathered: Gathered
  /** Half the thickness of the thickest rope, in metres. */
  readonly thickest: number
}

export function fieldOf(rig: Rig): Field {
  const strands = rig.lines.flatMap(strandsOf)
  const thickest = strands.reduce((most, { radius }) => Math.max(most, radius), 0)
  return { rig, strands, near: planIndex(strands), gathered: gatheredBy(rig), thickest }
}
