import type { Freed, OrderPhase } from '../../evolve/index.ts'
import type { OrderSetting } from './order-layout.ts'
import { callPhrase, curled, lineInOrder, listed } from './order-names.ts'

/** What is said beside the hauls of a phase: 'halyard: eased in 2, now belayed', or why there is nothing to ease. */
export function remarksOf(phase: OrderPhase, set: OrderSetting): readonly string[] {
  const freed = freedWords(phase.freed, set)
  if (freed.length > 0 || phase.ease.length > 0) return freed
  const pulls = phase.answers.length === 0 ? phase.answeredBy : []
  return pulls.length > 0 ? pulls.map(pull => `${curled(pull)} answers`) : ['nothing to ease']
}

interface FreedKind {
  readonly host: string | undefined
  readonly kind: string
  readonly name: string
  readonly foreign: boolean
  readonly reach: Freed['reach']
  readonly isPair: boolean
  readonly how: string
  readonly lines: number
}

function freedWords(freed: readonly Freed[], set: OrderSetting): readonly string[] {
  const kinds = ofOneKind(bothSides(freed).flatMap(one => freedKind(one, set)))
  const hows = [...new Set(kinds.map(({ how }) => how))]
  return hows.map(how => {
    const names = kinds.filter(kind => kind.how === how).map(nameOf)
    return `${names.join(', ')}: ${how}`
  })
}

interface FreedPair extends Omit<Freed, 'phase'> {
  readonly phases: readonly number[]
}

// The weather sheet eased in 2 and the lee one in 3 are the sheets, eased in 2 and 3.
function bothSides(freed: readonly Freed[]): readonly FreedPair[] {
  const pairs = freed.map(({ phase, ...one }) => ({ ...one, phases: [phase] }))
  return pairs.flatMap(one => {
    const other = pairs.find(
      pair =>
        pair.pairKey === one.pairKey &&
        pair.act === one.act &&
        pair.belayed === one.belayed &&
        opposed(pair, one),
    )
    if (!other) return [one]
    const phases = [...one.phases, ...other.phases].toSorted((a, b) => a - b)
    return pairs.indexOf(one) < pairs.indexOf(other) ? [{ ...one, reach: 'all' as const, phases }] : []
  })
}

const opposed = (a: Pick<Freed, 'reach'>, b: Pick<Freed, 'reach'>): boolean =>
  (a.reach === 'weather' && b.reach === 'lee') || (a.reach === 'lee' && b.reach === 'weather')

function freedKind(
  { pairKey, reach, act, phases, belayed }: FreedPair,
  { book, sail }: OrderSetting,
): readonly FreedKind[] {
  const line = book.rig.pairAt.get(pairKey)?.[0]
  if (!line) return []
  return [
    {
      host: line.host?.name,
      kind: line.kind,
      name: lineInOrder(line, sail, book),
      foreign: line.foreign,
      reach,
      isPair: line.side !== undefined,
      how: `${act === 'ease' ? 'eased' : 'off'} in ${listed(phases.map(String))}${belayed ? ', now belayed' : ''}`,
      lines: 1,
    },
  ]
}

// Inner and outer buntlines freed alike are the buntlines.
function ofOneKind(kinds: readonly FreedKind[]): readonly FreedKind[] {
  const same = (a: FreedKind, b: FreedKind) =>
    a.host === b.host && a.kind === b.kind && a.reach === b.reach && a.how === b.how
  return kinds.flatMap((one, at) => {
    const group = kinds.filter(other => same(one, other))
    return kinds.findIndex(other => same(one, other)) === at ? [{ ...one, lines: group.length }] : []
  })
}

function nameOf({ name, kind, foreign, reach, isPair, lines }: FreedKind): string {
  const several = !foreign && (lines > 1 || (isPair && reach === 'all'))
  return callPhrase({ name: lines > 1 ? kind : name, several, reach, after: false, when: undefined })
}
