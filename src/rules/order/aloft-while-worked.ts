import type { OrderRow } from '../../evolve/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import { extendsClew, hoistsYard, lowersYard, swingsYard } from '../deeds.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { whereHung } from '../where.ts'
import { aboutPhase, phaseName, phasesOf } from './phases.ts'

/** A phase that has hands on a yard while the yard is hoisted, lowered or braced, or its sail sheeted. */
export const aloftWhileWorked: Rule = {
  slug: 'order/aloft-while-worked',
  severity: 'error',
  judges: 'vessels and parts',
  *judge(ship) {
    const told = new Set<string>()
    for (const said of phasesOf(ship)) {
      const { phase, sail } = said
      if (!phase.aloft || sail.kind !== 'square') continue
      const place = `${said.said.span.source} ${said.said.span.start}`
      const moved =
        linesOf(ship.rig, phase.haul).find(movesYard) ?? linesOf(ship.rig, phase.ease).find(dropsYard)
      if (!moved || told.has(place)) continue
      told.add(place)
      const isHauled = movesYard(moved)
      yield {
        at: said.at,
        message: `${sentence(phaseName(said))} has hands aloft, and ${isHauled ? 'hauls' : 'eases'} the ${moved.words}.`,
        aboard: 'A yard that moves under them, or a sail that fills, throws hands off it.',
        remedy: 'Part it into two phases: hands off the yard and counted, and only then the word to haul.',
        related: [{ at: whereHung(ship.rig, moved), message: `the ${moved.words} is said here` }],
        about: [...aboutPhase(said), ...aboutLine(moved)],
      }
    }
  },
}

const movesYard = (line: Line) =>
  hoistsYard(line) || lowersYard(line) || swingsYard(line) || extendsClew(line)
const dropsYard = (line: Line) => hoistsYard(line) || swingsYard(line)

const linesOf = (rig: Rig, rows: readonly OrderRow[]): readonly Line[] =>
  rows.flatMap(({ lines }) => lines.starboard.flatMap(address => rig.lineAt.get(address) ?? []))
