import { type Figure, known, unknown } from '../../measure/index.ts'
import { type Purchase, purchaseNames, purchaseOf } from '../../rig/index.ts'
import { nearest } from '../../text/index.ts'

/** Purchases one upon another, from the load to the hands, and what they come to together. */
export interface Tackle {
  readonly stages: readonly Purchase[]
  /** Metres of fall for a metre of the load's travel, and the gain before friction. */
  readonly advantage: number
  /** Sheaves that the rope turns over, lead blocks apart. */
  readonly sheaves: number
}

/** The tackle of a line as the text says it: ['tye', 'runner', 'luff']. */
export function tackleOf(purchase: readonly string[]): Figure<Tackle> {
  if (purchase.length === 0) return unknown('No purchase is said.')
  const stages: Purchase[] = []
  for (const name of purchase) {
    const stage = purchaseOf(name)
    if (!stage) return unknown(unknownPurchase(name))
    stages.push(stage)
  }
  return known(joined(stages))
}

/** Powers of tackles one upon another multiply; their sheaves add up. */
export const joined = (stages: readonly Purchase[]): Tackle => ({
  stages,
  advantage: stages.reduce((product, stage) => product * stage.advantage, 1),
  sheaves: stages.reduce((sum, stage) => sum + stage.sheaves, 0),
})

function unknownPurchase(name: string): string {
  const plain = name.replace(/ to (dis)?advantage$/, '')
  if (plain !== name && purchaseOf(plain)) return `A ${plain} is rove in one way only.`
  const near = nearest(name, purchaseNames)
  const offer = near.length > 0 ? ` Nearest: ${near.join(', ')}.` : ''
  return `There is no purchase called "${name}".${offer}`
}
