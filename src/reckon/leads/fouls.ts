import type { Rig } from '../../rig/index.ts'
import { type Chafe, type Crossing, chafesOf, crossingsOf } from './crossings.ts'
import { type OverDeck, overDeckOf } from './over-deck.ts'
import { type ThroughMast, throughMastsOf } from './through-mast.ts'

/** Where leads come too near to something, by how much: what a rule makes of it is the rule's to say. */
export interface Fouls {
  readonly crossings: readonly Crossing[]
  readonly chafes: readonly Chafe[]
  readonly overDeck: readonly OverDeck[]
  readonly throughMasts: readonly ThroughMast[]
}

/** Everything that the leads of a rig foul, as the sails are set and the yards square. `fouls.md` has the method. */
export const foulsOf = (rig: Rig): Fouls => ({
  crossings: crossingsOf(rig),
  chafes: chafesOf(rig),
  overDeck: overDeckOf(rig),
  throughMasts: throughMastsOf(rig),
})
