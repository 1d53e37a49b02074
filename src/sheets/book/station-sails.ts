import type { Order, OrderPhase, OrderRow } from '../../evolve/index.ts'
import type { LineFunction, Sail } from '../../rig/index.ts'
import type { Book } from './book.ts'

/**
 * The sails that have a spread in a station's book: those of which it works most lines, from low to high, then
 * those of others in whose orders it hauls more than a brace or a guy, as the waist hauls a course's sheets.
 */
export function spreadSails(book: Book): readonly Sail[] {
  const own = book.lines.sails
  const others = book.rig.sails.filter(sail => !own.includes(sail) && hauls(sail, book))
  return [...own, ...others]
}

/** The other sails in whose orders the station has a hand: it braces for them, or tends a line. */
export function helpedSails(book: Book): readonly Sail[] {
  const spreads = spreadSails(book)
  return book.rig.sails.filter(
    sail =>
      !spreads.includes(sail) &&
      phasesOf(sail, book).some(phase => rowsOf(phase).some(row => isOwn(row, book))),
  )
}

/** All rows of a phase, whatever is done with them. */
export const rowsOf = ({ haul, ease, hold, tend, standBy }: OrderPhase): readonly OrderRow[] => [
  ...haul,
  ...ease,
  ...hold,
  ...tend,
  ...standBy,
]

/** Whether the station works a line of the row. */
export const isOwn = ({ stations }: OrderRow, { station }: Book): boolean => stations.includes(station.name)

/** The orders of a sail that the text gives. */
export function ordersOf(sail: Sail, { evolutions }: Book): readonly Order[] {
  const orders = evolutions.ordersAt.get(sail.name)
  return [orders?.set, orders?.douse].filter(order => order !== undefined)
}

const phasesOf = (sail: Sail, book: Book): readonly OrderPhase[] =>
  ordersOf(sail, book).flatMap(({ phases }) => phases)

const steadying: readonly LineFunction[] = ['turns', 'keeps']

function hauls(sail: Sail, book: Book): boolean {
  const moves = (row: OrderRow) => {
    const deed = book.rig.pairAt.get(row.pairKey)?.[0]?.function
    return deed === undefined || !steadying.includes(deed)
  }
  return phasesOf(sail, book).some(phase => phase.haul.some(row => isOwn(row, book) && moves(row)))
}
