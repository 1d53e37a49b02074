import { type Figure, known, unknown } from '../measure/index.ts'
import type { Act, Line, Phase, Rig, Side } from '../rig/index.ts'
import { type CalledPair, isPair, linesMeant, winds } from './called.ts'
import type { OrderRow } from './order.ts'

/** The rows that a phase's text gives for one act, in the order they are worked. */
export function rowsSaid(rig: Rig, phase: Phase, wanted: readonly Act[]): readonly OrderRow[] {
  return phase.acts.flatMap(({ act, lines, when }) =>
    wanted.includes(act)
      ? lines.map(worked => rowOf(rig, worked, { act, after: worked.then, when, source: 'text' }))
      : [],
  )
}

/** The row of a counterpart that the text is silent about: it is eased. */
export function rowFollowing(rig: Rig, pair: CalledPair): OrderRow {
  return rowOf(rig, pair, { act: 'ease', after: false, when: undefined, source: 'counterpart' })
}

function rowOf(
  rig: Rig,
  { pairKey, reach }: CalledPair,
  manner: Pick<OrderRow, 'act' | 'after' | 'when' | 'source'>,
): OrderRow {
  const pair: CalledPair = { pairKey, reach: isPair(rig, pairKey) ? reach : 'all' }
  const byWind = (wind: Side) => linesMeant(rig, pair, wind)
  const [starboard, port] = winds.map(byWind) as [readonly Line[], readonly Line[]]
  const larger = starboard.length >= port.length ? starboard : port
  const count = pair.reach === 'named' || pair.reach === 'other' ? Math.min(1, larger.length) : larger.length
  return {
    lines: { starboard: starboard.map(addressOf), port: port.map(addressOf) },
    count,
    hands: handsOn(larger, count),
    stations: [...new Set([...port, ...starboard].flatMap(line => line.station ?? []))],
    ...pair,
    ...manner,
  }
}

const addressOf = (line: Line): string => line.address

/** Hands on the heaviest `count` of these lines together. */
export function handsOn(lines: readonly Line[], count: number): Figure<number> {
  const silent = lines.find(line => line.hands === undefined)
  if (silent) return unknown(`the text gives no hands for the ${silent.words}`)
  const each = lines.map(line => line.hands ?? 0).toSorted((a, b) => b - a)
  return known(each.slice(0, count).reduce((total, hands) => total + hands, 0))
}
