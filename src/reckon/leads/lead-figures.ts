import { type Figure, type Metres, metres, onceKnown, workedFrom } from '../../measure/index.ts'
import { aboveTackle, type Line, type Rig } from '../../rig/index.ts'
import { tackleOf } from '../tackle/index.ts'
import { endsOf } from './ends.ts'
import { type Rove, roveAs } from './rove.ts'
import { type Way, wayOf } from './way.ts'

/** What is reckoned of a line from its lead. Every length is of rope, along all its parts. */
export interface LeadFigures {
  readonly way: Figure<Way>
  /** How far the load moves, from one end of its travel to the other. */
  readonly travel: Figure<Metres>
  /** How much of the fall is hauled for that. */
  readonly hauled: Figure<Metres>
  /** From the pin to the load, hauled home. */
  readonly home: Figure<Metres>
  /** The same, eased as far as it goes. */
  readonly slack: Figure<Metres>
  /** What to cut it from: one rope, or a wire or a pendant and its fall. With what is left at the pin. */
  readonly pieces: Figure<readonly Piece[]>
  /** Of all its pieces. */
  readonly length: Figure<Metres>
}

export interface Piece {
  readonly part: 'rope' | 'wire' | 'pendant' | 'fall'
  readonly length: Metres
}

/** Left at the pin with the load as far off as it goes, to belay with and to coil: common practice, no source. */
export const tail = metres(4)

/** The figures of every line, by its address, in the order of the text. `leads.md` has the method. */
export const leadFigures = (rig: Rig): ReadonlyMap<string, LeadFigures> =>
  new Map(rig.lines.map(line => [line.address, figuresOf(line, rig)]))

function figuresOf(line: Line, rig: Rig): LeadFigures {
  const way = wayOf(line)
  const ends = onceKnown(way, way => endsOf(line, way, rig))
  const rove = workedFrom([way, ends, tackleOf(line.purchase)] as const, (way, ends, tackle) =>
    roveAs(line, way, ends, tackle),
  )
  const pieces = workedFrom([rove], rove => piecesOf(line, rove))
  return {
    way,
    travel: workedFrom([ends], ends => ends.travel),
    hauled: workedFrom([rove], ({ home, slack }) => metres(slack - home)),
    home: workedFrom([rove], rove => rove.home),
    slack: workedFrom([rove], rove => rove.slack),
    pieces,
    length: workedFrom([pieces], pieces => metres(pieces.reduce((sum, piece) => sum + piece.length, 0))),
  }
}

function piecesOf({ purchase }: Line, { slack, pendant }: Rove): readonly Piece[] {
  if (pendant === undefined) return [{ part: 'rope', length: metres(slack + tail) }]
  return [
    { part: aboveTackle(purchase) ? 'wire' : 'pendant', length: pendant },
    { part: 'fall', length: metres(slack - pendant + tail) },
  ]
}
