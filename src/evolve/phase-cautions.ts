import type { LineFunction, Rig, Sail } from '../rig/index.ts'
import type { OrderPhase, OrderRow } from './order.ts'

/** As many cautions as one box may hold and still be read. */
const most = 3

/**
 * The cautions that a phase calls for by what is done in it, the gravest first. They serve a text that names no
 * caution in the whole order. Common practice, no source.
 */
export function cautionsCalledFor(rig: Rig, sail: Sail, phase: OrderPhase): readonly number[] {
  const facts = factsOf(rig, sail, phase)
  return callings
    .filter(({ when }) => when(facts))
    .map(({ number }) => number)
    .slice(0, most)
}

interface Facts {
  /** A yard or a gaff goes up or comes down. */
  readonly sparMoves: boolean
  readonly halyardHauled: boolean
  readonly halyardHeld: boolean
  readonly loadEased: boolean
  readonly anythingLetGo: boolean
  readonly clewMoves: boolean
  readonly yardTurns: boolean
  readonly boomMoves: boolean
  readonly aloft: boolean
  readonly anythingHauled: boolean
}

const callings: readonly { readonly number: number; readonly when: (facts: Facts) => boolean }[] = [
  { number: 8, when: facts => facts.sparMoves },
  { number: 12, when: facts => facts.boomMoves },
  { number: 6, when: facts => facts.aloft && facts.anythingHauled },
  { number: 7, when: facts => facts.aloft },
  { number: 13, when: facts => facts.aloft },
  { number: 2, when: facts => facts.halyardHauled || facts.halyardHeld },
  { number: 3, when: facts => facts.loadEased },
  { number: 5, when: facts => facts.yardTurns },
  { number: 4, when: facts => facts.clewMoves },
  { number: 9, when: facts => facts.anythingLetGo },
  { number: 1, when: facts => facts.anythingHauled },
]

function factsOf(rig: Rig, sail: Sail, phase: OrderPhase): Facts {
  const does = (rows: readonly OrderRow[], deed: LineFunction, object?: RegExp) =>
    rows.some(row =>
      (rig.pairAt.get(row.pairKey) ?? []).some(
        line => line.function === deed && (!object || object.test(line.deed?.object ?? '')),
      ),
    )
  const spar = /yard|gaff|throat|peak/
  const moved = [...phase.haul, ...phase.ease]
  return {
    sparMoves: does(moved, 'hoists', spar) || does(phase.haul, 'lowers', spar),
    halyardHauled: does(phase.haul, 'hoists'),
    halyardHeld: does(phase.hold, 'hoists'),
    loadEased: does(
      phase.ease.filter(row => row.act === 'ease'),
      'hoists',
    ),
    anythingLetGo: phase.ease.some(row => row.act === 'let go'),
    clewMoves: does(moved, 'extends', /clew/) || does(phase.haul, 'clews'),
    yardTurns: sail.kind === 'square' && does(phase.haul, 'turns'),
    boomMoves: moved.some(row => /boom/.test(objectOf(rig, row))),
    aloft: phase.aloft !== undefined,
    anythingHauled: phase.haul.length > 0,
  }
}

const objectOf = (rig: Rig, row: OrderRow): string => rig.pairAt.get(row.pairKey)?.[0]?.deed?.object ?? ''
