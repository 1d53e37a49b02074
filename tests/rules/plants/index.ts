import { berths } from './berths.ts'
import { figures } from './figures.ts'
import { gear } from './gear.ts'
import { leads } from './leads.ts'
import { masts } from './masts.ts'
import { onDeck } from './on-deck.ts'
import { orders } from './orders.ts'
import type { Plants } from './plant.ts'
import { shapes } from './shapes.ts'

/** Every kind of fault by name. */
export const plants: Plants = {
  ...berths,
  ...gear,
  ...shapes,
  ...orders,
  ...figures,
  ...leads,
  ...onDeck,
  ...masts,
}
