import type { Evolution, Phase, Rig, Sail } from '../rig/index.ts'
import { answersOf, belayedWhere, dealsOf, type Slack, slackAfter } from './answers.ts'
import { asLed } from './as-led.ts'
import { type CalledLine, folded } from './called.ts'
import { phaseHands } from './hands.ts'
import { isLifted, lessLifted } from './less-lifted.ts'
import type { Answer, Freed, Order, OrderPhase } from './order.ts'
import { cautionsCalledFor } from './phase-cautions.ts'
import { rowFollowing, rowsSaid } from './rows.ts'

/** The two orders of a sail; each undefined where the text gives no phases for it. */
export interface SailOrders {
  readonly sail: string
  readonly set: Order | undefined
  readonly douse: Order | undefined
}

/** How a sail is set and got in, as its gear says and its counterparts demand. */
export function workingOrders(rig: Rig, sail: Sail): SailOrders {
  return {
    sail: sail.name,
    set: sail.toSet && workingOrder(rig, sail, sail.toSet),
    douse: sail.toDouse && workingOrder(rig, sail, sail.toDouse),
  }
}

function workingOrder(rig: Rig, sail: Sail, evolution: Evolution): Order {
  const { kind, before, jams } = evolution
  const silentOnCautions = evolution.phases.every(phase => phase.cautions.length === 0)
  const phases: OrderPhase[] = []
  let slack: readonly Slack[] = []
  for (const [index, said] of evolution.phases.entries()) {
    const phase = asLed(rig, lessLifted(rig, said))
    const step = orderPhase(rig, phase, index + 1, slack)
    slack = step.slack
    const cautions = silentOnCautions ? cautionsCalledFor(rig, sail, step.phase) : phase.cautions
    phases.push({ ...step.phase, cautions })
  }
  return { kind, sail: sail.name, before, phases, jams }
}

interface Step {
  readonly phase: OrderPhase
  readonly slack: readonly Slack[]
}

function orderPhase(rig: Rig, phase: Phase, number: number, slack: readonly Slack[]): Step {
  const { order, answer, report, until, minds, cautions, aloft } = phase
  const deals = dealsOf(rig, phase)
  const answers = answersOf(rig, deals, slack)
  const followed = unique(
    answers
      .filter(({ how, counterpart }) => how.kind === 'follows' && !isLifted(rig, counterpart.pairKey))
      .map(({ counterpart }) => counterpart),
  )
  const following = folded(followed).map(pair => rowFollowing(rig, pair))
  const worked = {
    haul: rowsSaid(rig, phase, ['haul']),
    ease: [...rowsSaid(rig, phase, ['ease', 'let go']), ...following],
    tend: rowsSaid(rig, phase, ['tend']),
    aloft,
  }
  return {
    phase: {
      number,
      order,
      answer,
      report,
      until,
      minds,
      cautions,
      hold: rowsSaid(rig, phase, ['hold']),
      standBy: rowsSaid(rig, phase, ['stand by']),
      freed: freedBefore(answers, belayedWhere(slack, deals)),
      answeredBy: answeredOtherwise(
        rig,
        deals.filter(deal => deal.act === 'haul').map(deal => deal.line),
      ),
      answers,
      hands: phaseHands(rig, worked),
      ...worked,
    },
    slack: slackAfter(slack, deals, followed, number),
  }
}

function unique(lines: readonly CalledLine[]): readonly CalledLine[] {
  return lines.filter(
    (line, index) => lines.findIndex(one => one.pairKey === line.pairKey && one.as === line.as) === index,
  )
}

function freedBefore(answers: readonly Answer[], slack: readonly Slack[]): readonly Freed[] {
  const freed = answers.filter(({ how }) => how.kind === 'freed').map(({ counterpart }) => counterpart)
  const needed = slack.filter(({ line }) => freed.some(one => meets(one, line)))
  const groups = new Map<string, Slack[]>()
  for (const one of needed) {
    const key = `${one.phase} ${one.act} ${one.belayed}`
    groups.set(key, [...(groups.get(key) ?? []), one])
  }
  return [...groups.values()].flatMap(group => {
    const [first] = group
    if (!first) return []
    const { act, phase, belayed } = first
    return folded(group.map(({ line }) => line)).map(pair => ({ act, phase, belayed, ...pair }))
  })
}

// A freed brace may have been called lee and be needed as the other one: either way it is that pair's.
function meets(needed: CalledLine, slack: CalledLine): boolean {
  return (
    needed.pairKey === slack.pairKey &&
    (needed.as === 'named' || needed.as === 'other' || needed.as === slack.as)
  )
}

function answeredOtherwise(rig: Rig, hauled: readonly CalledLine[]): readonly string[] {
  const words = hauled.flatMap(({ pairKey }) =>
    (rig.pairAt.get(pairKey) ?? []).flatMap(line => line.answeredBy ?? []),
  )
  return [...new Set(words)]
}
