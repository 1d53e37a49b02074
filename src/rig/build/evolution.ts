import { nameKey, type Reference, type Statement } from '../../syntax/index.ts'
import type { Evolution, Phase, PhaseAct, WorkedLine } from '../evolution.ts'
import type { Sail } from '../sail.ts'
import { clause, clausesOf } from './clauses.ts'
import type { Hanging, Hung } from './hung.ts'
import { isOfTheGear, isPluralOf } from './kit.ts'

/** A sail's lines, and the lines of the sail above, whose sheets are made fast to its yard. */
export interface Crew {
  readonly hanging: Hanging
  readonly lines: readonly Hung[]
  readonly above: readonly Hung[]
}

/** How a sail is set or doused, with the gear's words bound to the rig's lines. */
export function buildEvolution(
  sequence: Statement | undefined,
  kind: Evolution['kind'],
  crew: Crew,
): Evolution | undefined {
  if (!sequence) return undefined
  return {
    kind,
    before: clause(sequence, 'before')?.words.text,
    phases: sequence.block.filter(one => one.kind === 'phase').map(phase => buildPhase(phase, crew)),
    jams: clause(sequence, 'jams')?.words.text,
    span: sequence.span,
  }
}

function buildPhase(phase: Statement, crew: Crew): Phase {
  const aloft = clause(phase, 'aloft')
  return {
    order: phase.name?.words ?? '',
    answer: clause(phase, 'answer')?.words.text,
    report: clause(phase, 'report')?.words.text,
    acts: clausesOf(phase, 'act').flatMap(act => buildAct(act, crew)),
    until: clause(phase, 'until')?.words.text,
    minds: clausesOf(phase, 'mind').map(({ words }) => words.text),
    cautions: clausesOf(phase, 'cautions').flatMap(({ numbers }) => numbers.map(count => count.value)),
    aloft: aloft && { hands: aloft.count?.value, work: aloft.words.text },
    span: phase.span,
  }
}

function buildAct(act: ReturnType<typeof clausesOf<'act'>>[number], crew: Crew): readonly PhaseAct[] {
  const lines = [
    ...act.lines.flatMap(reference => worked(reference, false, crew)),
    ...act.then.flatMap(reference => worked(reference, true, crew)),
  ]
  // An act on lines that this sail leaves out falls away.
  return lines.length > 0 ? [{ act: act.act, lines, when: act.when?.text }] : []
}

function worked({ name, reach }: Reference, then: boolean, crew: Crew): readonly WorkedLine[] {
  const key = nameKey(name.words)
  const pool = reach === 'above' ? crew.above : crew.lines
  const exact = pool.filter(({ own }) => own === key)
  const lines = exact.length > 0 ? exact : pool.filter(({ own }) => isPluralOf(key, own))
  return lines.flatMap(({ pairKey, side }, index): WorkedLine[] => {
    // The lines of a pair stand together, and are worked as one.
    if (pairKey === lines[index - 1]?.pairKey) return []
    if (!side) return reach === 'other' ? [] : [{ pairKey, reach: 'all', then }]
    return [{ pairKey, reach: reachOf(reach), then }]
  })
}

function reachOf(reach: Reference['reach']): WorkedLine['reach'] {
  switch (reach) {
    case 'weather':
    case 'lee':
    case 'named':
    case 'other':
      return reach
    default:
      return 'all'
  }
}

/** Names in the orders that mean no line of the gear, and never did. */
export function strangersInOrders({ kit }: Hanging): readonly Reference['name'][] {
  const strangers: Reference['name'][] = []
  const judge = ({ name, reach }: Reference) => {
    if (reach !== 'above' && !isOfTheGear(kit, name)) strangers.push(name)
  }
  for (const phase of [...(kit.toSet?.block ?? []), ...(kit.toDouse?.block ?? [])]) {
    for (const { lines, then } of clausesOf(phase, 'act')) {
      lines.forEach(judge)
      then.forEach(judge)
    }
  }
  return strangers
}

/** The sail that is sheeted to this one's yard. */
export const sailAbove = (sail: Sail, sails: readonly Sail[]): Sail | undefined =>
  sail.kind === 'square'
    ? sails.find(other => other.kind === 'square' && other.footYard === sail.yard)
    : undefined
