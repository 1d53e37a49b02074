import { type Figure, known, unknown } from '../../measure/index.ts'
import type { Tackle } from './tackle.ts'

/**
 * What a sheave's share means. `tackle.md` tells why three readings of ten per cent differ.
 * - on the load: each sheave adds its share of the load to what is lifted;
 * - off the lift: each sheave takes its share of what the tackle would lift without friction;
 * - compounding: each sheave passes on its tension divided by one and the share.
 */
export type FrictionModel = 'on the load' | 'off the lift' | 'compounding'

export interface Friction {
  readonly model: FrictionModel
  /** Of each sheave: 0.1 for ten per cent. */
  readonly share: number
}

/** Pull on the fall for a load of one, when hauling; the leads are sheaves between the tackle and the hands. */
export function pullRatio(tackle: Tackle, leads: number, friction: Friction): Figure<number> {
  const { share } = friction
  const sheaves = tackle.sheaves + leads
  switch (friction.model) {
    case 'on the load':
      return known((1 + sheaves * share) / tackle.advantage)
    case 'off the lift':
      return sheaves * share < 1
        ? known(1 / (tackle.advantage * (1 - sheaves * share)))
        : unknown(`${sheaves} sheaves leave nothing of the lift at ${share * 100} % off for each.`)
    case 'compounding':
      return compounded(tackle, leads, share)
  }
}

/** Pull that holds a load of one from running back: friction helps the hands. */
export const holdingRatio = (tackle: Tackle, leads: number, { share }: Friction): number =>
  1 / (tackle.advantage * (1 + (tackle.sheaves + leads) * share))

/** The tensions of the parts at the moving block, each a sheave further from the hands, make up the load. */
function compounded({ stages }: Tackle, leads: number, share: number): Figure<number> {
  let ratio = (1 + share) ** leads
  for (const { name, sheaves, advantage } of stages) {
    const first = sheaves - advantage + 1
    if (first < 0 || first > 1) return unknown(`Compounding friction is not worked for a ${name}.`)
    let load = 0
    for (let turned = first; turned <= sheaves; turned++) load += (1 + share) ** -turned
    ratio /= load
  }
  return known(ratio)
}
