import type { Order, OrderPhase } from '../../evolve/index.ts'
import { type Phase, phaseKey, type Sail } from '../../rig/index.ts'
import type { Span } from '../../text/index.ts'
import { inWords, sentence } from '../naming.ts'
import type { Ship } from '../rule.ts'

/** One phase of setting or dousing a sail, with where it is said. */
export interface SaidPhase {
  readonly sail: Sail
  readonly order: Order
  readonly phase: OrderPhase
  /** The phase as the text has it, in a gear that many sails may share. */
  readonly said: Phase
  /** Where a finding may point: the phase, or the sail where its gear is brought in from elsewhere. */
  readonly at: Span
}

/** Every phase of every sail, in the order of the sails. */
export function phasesOf({ rig, evolutions }: Pick<Ship, 'rig' | 'evolutions'>): readonly SaidPhase[] {
  return rig.sails.flatMap(sail => {
    const orders = evolutions.ordersAt.get(sail.name)
    return [
      ...saidPhases(sail, orders?.set, sail.toSet?.phases ?? []),
      ...saidPhases(sail, orders?.douse, sail.toDouse?.phases ?? []),
    ]
  })
}

function saidPhases(sail: Sail, order: Order | undefined, said: readonly Phase[]): readonly SaidPhase[] {
  if (!order) return []
  return order.phases.flatMap(phase => {
    const as = said[phase.number - 1]
    if (!as) return []
    const at = as.span.source === sail.span.source ? as.span : sail.span
    return [{ sail, order, phase, said: as, at }]
  })
}

/** A phase as a sentence calls it: 'phase 2 of setting the jib ("Hoist away.")'. */
export const phaseName = ({ sail, order, phase }: SaidPhase): string =>
  `phase ${phase.number} of ${order.kind === 'set' ? 'setting' : 'dousing'} the ${sail.name} ("${phase.order}")`

/** What an allowance may call a phase by: its sail, or the place where it stands. */
export const aboutPhase = ({ sail, said }: SaidPhase): readonly string[] => [sail.name, phaseKey(said)]

/** What a finding on the hands of a phase explains and follows from. */
export const handsOf = ({ sail, order, phase }: SaidPhase): string =>
  `hands in phase ${phase.number} of the ${order.kind} of ${sail.name}`

/** A second sentence for other phases of the same fault: ' Two other phases take more than she has.' Empty for none. */
export function otherPhases(count: number, fare: string): string {
  if (count === 0) return ''
  const [verb, ...rest] = fare.split(' ')
  const does = count === 1 ? [`${verb}s`, ...rest].join(' ') : fare
  return ` ${sentence(inWords(count))} other ${count === 1 ? 'phase' : 'phases'} ${does}.`
}
