import type { Rig, SquareSail } from '../../rig/index.ts'
import { hoistsYard } from '../deeds.ts'
import type { Gear } from '../gear.ts'
import { type BelayedLine, isBelayed } from '../pairs.ts'

/** The halyard of a hoisting yard, with the class of the sail that the yard carries. */
export interface YardHalyard {
  readonly class: SquareSail['class']
  readonly mast: string
  readonly line: BelayedLine
}

/** Halyards of the square yards, in the order of the sails. */
export function yardHalyards(rig: Rig, gear: Gear): readonly YardHalyard[] {
  return rig.sails.flatMap(sail => {
    if (sail.kind !== 'square' || !sail.mast) return []
    const line = gear.ofSail(sail).filter(isBelayed).find(hoistsYard)
    return line && line.belay.side !== 'centre' ? [{ class: sail.class, mast: sail.mast, line }] : []
  })
}
