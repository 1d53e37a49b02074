import type { Answer } from '../../evolve/index.ts'
import { aboutLine, listed, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { whereHung } from '../where.ts'
import { aboutPhase, phaseName, phasesOf } from './phases.ts'

/** A phase that hauls a line while everything that answers it is held fast. */
export const hauledAgainst: Rule = {
  slug: 'order/hauled-against',
  severity: 'error',
  judges: 'vessels and parts',
  *judge(ship) {
    const { rig } = ship
    const told = new Set<string>()
    for (const said of phasesOf(ship)) {
      for (const [pairKey, answers] of byHauled(said.phase.answers)) {
        const [line] = rig.pairAt.get(pairKey) ?? []
        const place = `${said.said.span.source} ${said.said.span.start} ${line?.labelOnSail}`
        if (!line || !answers.every(isFast) || told.has(place)) continue
        told.add(place)
        const held = [
          ...new Set(answers.flatMap(({ counterpart }) => rig.pairAt.get(counterpart.pairKey)?.[0] ?? [])),
        ]
        const fast = held.map(({ words }) => words)
        yield {
          at: said.at,
          message: `${sentence(phaseName(said))} hauls the ${line.words} while the ${listed(fast)} ${fast.length > 1 ? 'are' : 'is'} held fast.`,
          aboard:
            'Hauled against what is fast, it tears the sail or carries away the gear; or nothing moves, and the party heaves on.',
          remedy: `Ease the ${listed(fast)} in this phase, or in one before it.`,
          related: held.map(other => ({
            at: whereHung(rig, other),
            message: `the ${other.words} is said here`,
          })),
          about: [...aboutPhase(said), ...aboutLine(line)],
        }
      }
    }
  },
}

/** Held, or only manned: an answer that moves, or was freed before, or follows unsaid, is an answer. */
const isFast = ({ how }: Answer) => how.kind === 'here' && (how.act === 'hold' || how.act === 'stand by')

function byHauled(answers: readonly Answer[]): ReadonlyMap<string, readonly Answer[]> {
  const hauled = new Map<string, Answer[]>()
  for (const answer of answers) {
    const list = hauled.get(answer.hauled.pairKey)
    if (list) list.push(answer)
    else hauled.set(answer.hauled.pairKey, [answer])
  }
  return hauled
}
