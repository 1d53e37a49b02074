import type { Line, Rig, Sail } from '../../rig/index.ts'
import type { Book } from './book.ts'
import { curled, lineInOrder, listed } from './order-names.ts'

/** Sails that the station would have, all of whose lines are sent down: those of the masts of its own. */
export function liftedSails({ rig, lines }: Book): readonly Sail[] {
  const masts = new Set(lines.sails.map(sail => sail.mast))
  return rig.sails.filter(sail => {
    const own = linesOf(sail, rig)
    return masts.has(sail.mast) && own.length > 0 && own.every(({ lifted }) => lifted !== undefined)
  })
}

/** 'sent down, because she is laid up: it can’t be set'. */
export const liftedNote = (sail: Sail, rig: Rig): string =>
  `sent down, because ${curled(linesOf(sail, rig)[0]?.lifted ?? '')}: it can’t be set`

/** 'The halyard is sent down: the sail can’t be set.', of a sail some of whose lines are; undefined where none is. */
export function liftedWords(sail: Sail, book: Book): string | undefined {
  const lifted = linesOf(sail, book.rig).filter(line => line.lifted !== undefined)
  if (lifted.length === 0) return undefined
  const names = [...new Set(lifted.map(line => lineInOrder(line, sail.name, book)))]
  const unset = lifted.some(line => line.function === 'hoists' || line.function === 'extends')
  const fare = unset ? ': the sail can’t be set' : ''
  return `Sent down: ${listed(names)}, because ${curled(lifted[0]?.lifted ?? '')}${fare}.`
}

const linesOf = (sail: Sail, rig: Rig): readonly Line[] =>
  rig.lines.filter(({ host }) => host?.kind === 'sail' && host.name === sail.name)
