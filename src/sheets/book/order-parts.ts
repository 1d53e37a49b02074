import type { Order, OrderPhase } from '../../evolve/index.ts'

/** What of an order stands in one place: a phase, or a part of one that is longer than a page. */
export interface PhasePart {
  readonly phase: OrderPhase
  /** Whether the phase begins before: then its order is only called to mind. */
  readonly isContinued: boolean
  /** Cautions that earlier phases of the order have told in words. */
  readonly told: ReadonlySet<number>
}

/** The phases of an order, each whole. */
export function wholePhases({ phases }: Order): readonly PhasePart[] {
  const told = new Set<number>()
  return phases.map(phase => {
    const part = { phase, isContinued: false, told: new Set(told) }
    for (const caution of phase.cautions) told.add(caution)
    return part
  })
}

/**
 * A phase in two parts, for one that is longer than a page: half of each of its lists stands in the first, which
 * has the order, and the other half in the second, which has what ends it. Undefined where there is nothing to halve.
 */
export function halved({ phase, ...part }: PhasePart): readonly [PhasePart, PhasePart] | undefined {
  if (lists.every(list => phase[list].length < 2)) return undefined
  const first: OrderPhase = {
    ...phase,
    ...each(phase, upper),
    aloft: undefined,
    until: undefined,
    report: undefined,
  }
  const second: OrderPhase = { ...phase, ...each(phase, lower), answer: undefined, cautions: [], freed: [] }
  return [
    { ...part, phase: first },
    { ...part, phase: second, isContinued: true },
  ]
}

const lists = ['minds', 'haul', 'ease', 'hold', 'tend', 'standBy'] as const

type Half = <Item>(items: readonly Item[]) => readonly Item[]
const upper: Half = items => items.slice(0, Math.ceil(items.length / 2))
const lower: Half = items => items.slice(Math.ceil(items.length / 2))

const each = (phase: OrderPhase, half: Half): Pick<OrderPhase, (typeof lists)[number]> => ({
  minds: half(phase.minds),
  haul: half(phase.haul),
  ease: half(phase.ease),
  hold: half(phase.hold),
  tend: half(phase.tend),
  standBy: half(phase.standBy),
})
