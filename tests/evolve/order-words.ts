import type { Order, OrderPhase, OrderRow } from '../../src/evolve/index.ts'
import type { Rig } from '../../src/rig/index.ts'

/** A row as an order calls it: 'lee sheet', 'halyard', 'weather inner buntline'; without a side where all are meant. */
export function called(rig: Rig, { pairKey, reach }: OrderRow): string {
  const line = rig.pairAt.get(pairKey)?.[0]
  const name = line?.labelOnSail.toLowerCase() ?? pairKey
  return reach === 'all' ? name : `${reach} ${name}`
}

/** What is hauled, phase by phase, in the order it is worked. */
export const hauls = (rig: Rig, order: Order): readonly (readonly string[])[] =>
  order.phases.map(phase => inTurn(phase.haul).map(row => called(rig, row)))

/** What is hauled, one after the other, without the lines whose names hold one of these words. */
export const hauledInOrder = (rig: Rig, order: Order, without: readonly string[]): readonly string[] =>
  hauls(rig, order)
    .flat()
    .filter(name => !without.some(word => name.includes(word)))

/** What is eased or let go in a phase. */
export const eased = (rig: Rig, phase: OrderPhase): readonly string[] =>
  phase.ease.map(row => called(rig, row))

/** The phase in which a line is hauled; it must be one. */
export function phaseHauling(rig: Rig, order: Order, name: string): OrderPhase {
  const found = order.phases.find(phase => phase.haul.some(row => called(rig, row) === name))
  if (!found) throw new Error(`no phase to ${order.kind} the ${order.sail} hauls the ${name}`)
  return found
}

/** Lines worked "then" after those of the first breath. */
const inTurn = (rows: readonly OrderRow[]): readonly OrderRow[] => [
  ...rows.filter(({ after }) => !after),
  ...rows.filter(({ after }) => after),
]
