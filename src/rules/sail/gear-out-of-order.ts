import type { Line, Place, Rail, Rig, Sail } from '../../rig/index.ts'
import { isHalyard } from '../deeds.ts'
import { aboutLine, aboutRail, listed, railName, sentence } from '../naming.ts'
import { orderOf, outOfOrder } from '../out-of-order.ts'
import type { Draft, Rule } from '../rule.ts'

/** The lines of one sail along a rail in another order than those of the sail before it there. */
export const gearOutOfOrder: Rule = {
  slug: 'sail/gear-out-of-order',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const told = new Set<string>()
    for (const rail of rig.rails) {
      const rows = rowsAlong(rig, rail)
      for (const [index, row] of rows.entries()) {
        const model = rows.slice(0, index).findLast(other => isLike(other, row))
        const [word] = model ? outOfOrder(wordsOf(model), wordsOf(row)) : []
        // The same disorder on both sides of the deck is one.
        const key = `${rail.mark} ${row.sail.name}`
        if (!model || word === undefined || told.has(key)) continue
        told.add(key)
        yield* disordered(rail, row, model, word)
      }
    }
  },
}

interface Berthed {
  readonly word: string
  readonly line: Line
  readonly place: Place
}

interface Row {
  readonly sail: Sail
  readonly gear: readonly Berthed[]
}

const wordsOf = ({ gear }: Row) => gear.map(({ word }) => word)
const isLike = (a: Row, b: Row) => a.sail.kind === b.sail.kind && a.sail.mast === b.sail.mast

/**
 * What a rail carries of each sail, from forward, in the order in which the sails come there. Halyards, at the ends,
 * don't count, nor the two of a pair that stand on one athwart beam.
 */
function rowsAlong(rig: Rig, rail: Rail): readonly Row[] {
  const rows = new Map<Sail, Map<string, Berthed | undefined>>()
  for (const place of rail.places) {
    for (const line of place.lines.flatMap(address => rig.lineAt.get(address) ?? [])) {
      const sail = line.host && rig.sailAt.get(line.host.name)
      if (!sail || isHalyard(line)) continue
      const row = rows.get(sail) ?? new Map<string, Berthed | undefined>()
      const word = line.labelOnSail.toLowerCase()
      rows.set(sail, row.set(word, row.has(word) ? undefined : { word, line, place }))
    }
  }
  return [...rows].flatMap(([sail, row]) => {
    const gear = [...row.values()].filter(one => one !== undefined)
    return gear.length > 1 ? [{ sail, gear }] : []
  })
}

function* disordered(rail: Rail, row: Row, model: Row, word: string): Iterable<Draft> {
  const strayed = row.gear.find(one => one.word === word)
  const fellow = model.gear.find(one => one.word === word)
  if (!strayed || !fellow) return
  const where = rail.mirrored ? `${rail.name}, port and starboard,` : railName(rail)
  yield {
    at: strayed.line.belaySpan ?? row.sail.span,
    message: `${sentence(where)} has the ${strayed.line.words} at pin ${strayed.place.pin} out of the order that the ${model.sail.name} has there: ${listed(wordsOf(model))}.`,
    aboard:
      'Hands find the second line of a sail from the first; where one sail differs they cast off the wrong one.',
    remedy: 'Give the lines of every sail on the rail one order.',
    related: [
      { at: fellow.line.belaySpan ?? model.sail.span, message: `the ${fellow.line.words} is belayed here` },
    ],
    about: [...aboutLine(strayed.line), ...aboutRail(rail)],
    follows: [orderOf(strayed.line)],
  }
}
