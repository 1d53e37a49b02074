import {
  type Figure,
  type Kilograms,
  type Newtons,
  type SquareMetres,
  workedFrom,
} from '../../measure/index.ts'
import type { Rig, Sail } from '../../rig/index.ts'
import type { Assumptions } from '../assumptions.ts'
import { clothMass, type SailFigures } from '../sails/index.ts'
import { sailForce, strongWindOf } from './sail-force.ts'

/** What a sail brings on its gear. */
export interface SailLoad {
  readonly area: SquareMetres
  /** Of its dry cloth. */
  readonly mass: Kilograms
  /** The wind's force on it while its lines are hauled. */
  readonly force: Newtons
  /** The wind's force on it that its lines must bear. */
  readonly strongForce: Newtons
}

const sailLoad = (sail: Sail, figures: SailFigures, assumptions: Assumptions): Figure<SailLoad> =>
  workedFrom([figures.area, clothMass(sail, figures, assumptions.canvas)], (area, mass) => ({
    area,
    mass,
    force: sailForce(area, assumptions.wind),
    strongForce: sailForce(area, strongWindOf(sail, assumptions)),
  }))

/** The loads of every sail that has figures, by its key. */
export function sailLoads(
  rig: Rig,
  sails: ReadonlyMap<string, SailFigures>,
  assumptions: Assumptions,
): ReadonlyMap<string, Figure<SailLoad>> {
  return new Map(
    rig.sails.flatMap(sail => {
      const figures = sails.get(sail.name)
      return figures ? [[sail.name, sailLoad(sail, figures, assumptions)] as const] : []
    }),
  )
}
