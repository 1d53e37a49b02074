import type { Line } from '../../rig/index.ts'
import { hoistsPeak, hoistsThroat, hoistsYard, isLazyJack, topsBoom } from '../deeds.ts'
import { gearOf } from '../gear.ts'
import { aboutLine, listed, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { whereHung } from '../where.ts'
import { aboutPhase, phaseName, phasesOf, type SaidPhase } from './phases.ts'

/** A phase that lets go all that holds a spar up. */
export const letGoUnderLoad: Rule = {
  slug: 'order/let-go-under-load',
  severity: 'error',
  judges: 'vessels and parts',
  *judge(ship) {
    const gear = gearOf(ship.rig)
    const told = new Set<string>()
    for (const said of phasesOf(ship)) {
      const gone = letGoIn(said)
      const place = `${said.said.span.source} ${said.said.span.start}`
      if (gone.size === 0 || told.has(place)) continue
      const lines = gear.ofSail(said.sail)
      const load = loads.find(one => isDropped(said, one, lines, gone))
      if (!load) continue
      told.add(place)
      const holders = lines.filter(load.holds)
      const names = [...new Set(holders.map(({ words }) => words))]
      const [first] = holders
      yield {
        at: said.at,
        message: `${sentence(phaseName(said))} lets go the ${listed(names)}, and nothing else holds the ${load.what} up.`,
        aboard: `The ${load.what} comes down by the run, on whoever is under it.`,
        remedy: `Say "ease" for "let go": what bears a load is surged round its pin.`,
        related: first
          ? [{ at: whereHung(ship.rig, first), message: `the ${first.words} is said here` }]
          : [],
        about: [...aboutPhase(said), ...holders.flatMap(aboutLine)],
      }
    }
  },
}

/** Something heavy, and the lines that hold it up. While a sail stands it holds its boom, so that only dousing counts. */
interface Load {
  readonly what: string
  readonly holds: (line: Line) => boolean
  readonly when: (said: SaidPhase) => boolean
}

const loads: readonly Load[] = [
  { what: 'yard', holds: hoistsYard, when: () => true },
  { what: 'gaff', holds: line => hoistsThroat(line) || hoistsPeak(line), when: () => true },
  {
    what: 'boom',
    holds: line => topsBoom(line) && !isLazyJack(line),
    when: ({ order }) => order.kind === 'douse',
  },
]

const isDropped = (
  said: SaidPhase,
  { holds, when }: Load,
  lines: readonly Line[],
  gone: ReadonlySet<string>,
): boolean => when(said) && lines.some(holds) && lines.filter(holds).every(({ address }) => gone.has(address))

/** Addresses of the lines let go on one tack: on the other it is their fellows. */
function letGoIn({ phase }: SaidPhase): ReadonlySet<string> {
  const rows = phase.ease.filter(({ act }) => act === 'let go')
  return new Set(rows.flatMap(row => row.lines.starboard))
}
