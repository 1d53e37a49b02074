import type { Rig } from '../rig/index.ts'
import { type SailOrders, workingOrders } from './working-order.ts'

/** How every sail of the vessel is set and got in. */
export interface Evolutions {
  /** In the order of the rig's sails. */
  readonly sails: readonly SailOrders[]
  /** The same, by the sail's name. */
  readonly ordersAt: ReadonlyMap<string, SailOrders>
}

/** The orders of every sail, with the lines to ease, the hands and the lenders of hands that follow from the rig. */
export function evolve(rig: Rig): Evolutions {
  const sails = rig.sails.map(sail => workingOrders(rig, sail))
  return { sails, ordersAt: new Map(sails.map(orders => [orders.sail, orders])) }
}
