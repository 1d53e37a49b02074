import type { Rig } from '../../rig/index.ts'
import { bracedFields } from './braced.ts'
import { type Chafe, type Crossing, chafesOf, crossingsOf } from './crossings.ts'
import { fieldOf } from './field.ts'
import { type OverDeck, overDeckOf } from './over-deck.ts'
import { type ThroughMast, throughMastsOf } from './through-mast.ts'

/** Where leads come too near to something, by how much: what a rule makes of it is the rule's to say. */
export interface Fouls {
  readonly crossings: readonly Crossing[]
  readonly chafes: readonly Chafe[]
  /** Of the braces alone, with the yards braced sharp on either tack. */
  readonly braced: { readonly crossings: readonly Crossing[]; readonly chafes: readonly Chafe[] }
  readonly overDeck: readonly OverDeck[]
  readonly throughMasts: readonly ThroughMast[]
}

/** Everything that the leads of a rig foul, as the sails are set and the yards square, and its braces with the yards sharp. `fouls.md` has the method. */
export function foulsOf(rig: Rig): Fouls {
  const field = fieldOf(rig)
  const sharp = bracedFields(field)
  return {
    crossings: crossingsOf(field),
    chafes: chafesOf(field),
    braced: { crossings: sharp.flatMap(crossingsOf), chafes: sharp.flatMap(chafesOf) },
    overDeck: overDeckOf(field),
    throughMasts: throughMastsOf(field),
  }
}
