import type { Act, Phase, Rig } from '../rig/index.ts'
import { type CalledLine, calledLines, counterpartsOf, covers } from './called.ts'
import type { Answer } from './order.ts'

/** A line that an order has eased or let go, and not hauled again since. */
export interface Slack {
  readonly line: CalledLine
  readonly act: 'ease' | 'let go'
  readonly phase: number
  /** Held again in a later phase. */
  readonly belayed: boolean
}

/** What is done with one called line in one phase. */
export interface Deal {
  readonly line: CalledLine
  readonly act: Act
}

/** All that a phase does, line by line. */
export function dealsOf(rig: Rig, phase: Phase): readonly Deal[] {
  return phase.acts.flatMap(({ act, lines }) =>
    lines.flatMap(worked => calledLines(rig, worked).map(line => ({ line, act }))),
  )
}

/**
 * How each line hauled in a phase is answered: in this phase by what the text says, or by what was freed before
 * it, or, where the text is silent, by an ease that follows from the counterpart.
 */
export function answersOf(rig: Rig, deals: readonly Deal[], slack: readonly Slack[]): readonly Answer[] {
  const hauled = deals.filter(deal => deal.act === 'haul').map(deal => deal.line)
  return hauled.flatMap(line =>
    counterpartsOf(rig, line).map(counterpart => ({
      hauled: line,
      counterpart,
      how: howAnswered(counterpart, deals, slack),
    })),
  )
}

// What the hand does with the counterpart on this very order comes first. A line freed before is answered by
// that, even where the text now holds it: eased in 2, now belayed.
function howAnswered(
  counterpart: CalledLine,
  deals: readonly Deal[],
  slack: readonly Slack[],
): Answer['how'] {
  const moved = actOn(counterpart, deals, ['ease', 'let go', 'tend', 'haul'])
  if (moved) return { kind: 'here', act: moved }
  const freed = slack.filter(({ line }) => line.pairKey === counterpart.pairKey)
  const lines = freed.map(({ line }) => line)
  if (covers(lines, counterpart)) return { kind: 'freed', phase: latest(freed, counterpart) }
  const kept = actOn(counterpart, deals, ['hold', 'stand by'])
  return kept ? { kind: 'here', act: kept } : { kind: 'follows' }
}

function actOn(line: CalledLine, deals: readonly Deal[], acts: readonly Act[]): Act | undefined {
  return acts.find(act => covers(linesOf(deals, [act]), line))
}

const linesOf = (deals: readonly Deal[], acts: readonly Act[]): readonly CalledLine[] =>
  deals.filter(deal => acts.includes(deal.act)).map(deal => deal.line)

function latest(freed: readonly Slack[], { as }: CalledLine): number {
  const own = freed.find(({ line }) => line.as === as)
  return own ? own.phase : Math.max(...freed.map(({ phase }) => phase))
}

/** What lies slack after a phase: what it freed is added, what it hauled is taken off, what it held is made fast. */
export function slackAfter(
  slack: readonly Slack[],
  deals: readonly Deal[],
  followed: readonly CalledLine[],
  phase: number,
): readonly Slack[] {
  const freed = [
    ...deals.flatMap(({ line, act }) =>
      act === 'ease' || act === 'let go' ? [{ line, act, phase, belayed: false }] : [],
    ),
    ...followed.map(line => ({ line, act: 'ease' as const, phase, belayed: false })),
  ]
  const hauled = linesOf(deals, ['haul'])
  const kept = slack.filter(
    ({ line }) =>
      !touches(hauled, line) &&
      !touches(
        freed.map(one => one.line),
        line,
      ),
  )
  return [...belayedWhere(kept, deals), ...freed]
}

/** The same, with the lines that a phase holds made fast. */
export function belayedWhere(slack: readonly Slack[], deals: readonly Deal[]): readonly Slack[] {
  const held = linesOf(deals, ['hold'])
  return slack.map(one => (covers(held, one.line) ? { ...one, belayed: true } : one))
}

// A line called by name may be either of its pair, so that hauling it ends what was known of both.
function touches(lines: readonly CalledLine[], line: CalledLine): boolean {
  const byName = (as: CalledLine['as']) => as === 'named' || as === 'other'
  return lines.some(
    ({ pairKey, as }) => pairKey === line.pairKey && (as === line.as || byName(as) !== byName(line.as)),
  )
}
