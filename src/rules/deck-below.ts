import type { Metres } from '../measure/index.ts'
import type { Rig } from '../rig/index.ts'

/** Height of the deck under something at a height: the highest of those that lie lower; undefined where none is said. */
export function deckBelow(height: number, { vessel }: Rig): Metres | undefined {
  const below = vessel.decks.filter(deck => deck.height < height).map(deck => deck.height)
  return below.length > 0 ? (Math.max(...below) as Metres) : undefined
}
