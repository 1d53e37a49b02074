import type { Line, Rig } from '../../rig/index.ts'
import { aboutLine, aboutRail, listed, railName, sentence } from '../naming.ts'
import type { Draft, Rule } from '../rule.ts'
import { aboutPhase, phaseName, phasesOf, type SaidPhase } from './phases.ts'

/** A line hauled by a station while the line that must be eased stands on a rail that no station works. */
export const counterpartUnmanned: Rule = {
  slug: 'order/counterpart-unmanned',
  severity: 'warning',
  judges: 'vessels',
  *judge(ship) {
    const { rig } = ship
    const byRail = new Map<string, Wanting>()
    if (rig.stations.length === 0) return
    for (const said of phasesOf(ship)) {
      for (const line of unmannedIn(rig, said)) {
        const mark = rig.railAt.get(line.belay?.rail ?? '')?.mark ?? ''
        const wanting = byRail.get(mark) ?? { said, first: line, lines: new Set<string>() }
        byRail.set(mark, wanting)
        wanting.lines.add(line.pairKey)
      }
    }
    for (const wanting of byRail.values()) yield unmanned(rig, wanting)
  },
}

/** Lines of one rail that want somebody, and the phase where the first of them does. */
interface Wanting {
  readonly said: SaidPhase
  readonly first: Line
  readonly lines: Set<string>
}

/** Counterparts of what a station hauls in a phase that are belayed where no station works. */
function unmannedIn(rig: Rig, { phase }: SaidPhase): readonly Line[] {
  return phase.answers.flatMap(({ hauled, counterpart }) => {
    const isManned = rig.pairAt.get(hauled.pairKey)?.some(line => line.station !== undefined)
    const lines = rig.pairAt.get(counterpart.pairKey) ?? []
    return isManned ? lines.filter(line => line.belay && line.station === undefined) : []
  })
}

function unmanned(rig: Rig, { said, first, lines }: Wanting): Draft {
  const rail = rig.railAt.get(first.belay?.rail ?? '')
  const words = [...lines].flatMap(pairKey => rig.pairAt.get(pairKey)?.[0]?.words ?? [])
  const more =
    words.length > 1
      ? ` So do the ${listed(words.slice(1, 4))}${words.length > 4 ? ` and ${words.length - 4} more` : ''} there, in this phase or others.`
      : ''
  const name = rail ? (rail.mirrored ? rail.name : railName(rail)) : 'place'
  return {
    at: rail?.span ?? first.span,
    message: `The ${name} is worked by no station, and ${phaseName(said)} wants a hand at it for the ${first.words}.${more}`,
    aboard: 'The one is hauled on the word, and nobody stands by the other to ease it.',
    remedy: `Say "works ${name}" of a station.`,
    related: [
      {
        at: said.at,
        message: `${sentence(said.order.kind === 'set' ? 'setting' : 'dousing')} the ${said.sail.name} wants it here`,
      },
    ],
    about: [...aboutRail(rail), ...aboutLine(first), ...aboutPhase(said)],
  }
}
