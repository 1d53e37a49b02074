import { type Figure, known, type Newtons, unknown } from '../../measure/index.ts'

/** How hands are counted on a fall. */
export interface HandForce {
  /** The steady pull of one hand. */
  readonly hand: Newtons
  /** What each hand beyond the fourth gives less than a whole one: 0.1 for ten per cent. */
  readonly loss: number
}

/** Up to so many hands each gives a whole hand's pull. */
const smallParty = 4

/** What each hand beyond the fourth gives less where a large party is reckoned with: common practice, no source. */
export const inLargeParty = 0.1

/** Hands that must tail on to a fall for a steady pull. */
export function handsFor(pull: Newtons, { hand, loss }: HandForce): Figure<number> {
  if (!(hand > 0)) return unknown('A hand is said to pull nothing.')
  if (!(loss >= 0 && loss < 1)) return unknown('A hand beyond the fourth is said to give nothing.')
  const whole = pull / hand
  if (whole <= smallParty) return known(Math.ceil(whole - rounding))
  return known(smallParty + Math.ceil((whole - smallParty) / (1 - loss) - rounding))
}

/** A pull that is just so many hands asks for no other. */
const rounding = 1e-9

/** A capstan or winch: how far the hands walk or wind for a metre of rope, and what of their force comes through. */
export interface Engine {
  readonly advantage: number
  readonly efficiency: number
  readonly mostHands: number
}

/** Four bars with two hands each, eight to one: common practice, no source. */
export const capstan: Engine = { advantage: 8, efficiency: 0.8, mostHands: 8 }

/** Hands at a capstan or winch for a pull on the rope; unknown where there is no room for so many. */
export function handsAt(engine: Engine, pull: Newtons, hand: Newtons): Figure<number> {
  const wanted = Math.ceil(pull / (engine.advantage * engine.efficiency * hand) - rounding)
  return wanted <= engine.mostHands
    ? known(wanted)
    : unknown(`It takes ${wanted} hands, and there is room for ${engine.mostHands}.`)
}
