import type { Freed, OrderPhase } from '../../evolve/index.ts'
import type { OrderSetting } from './order-layout.ts'
import { callPhrase, lineInOrder } from './order-names.ts'

/** What is said beside the hauls of a phase: 'halyard: eased in 2, now belayed', or why there is nothing to ease. */
export function remarksOf(phase: OrderPhase, set: OrderSetting): readonly string[] {
  const freed = freedWords(phase.freed, set)
  if (freed.length > 0 || phase.ease.length > 0) return freed
  const pulls = phase.answers.length === 0 ? phase.answeredBy : []
  return pulls.length > 0 ? pulls.map(pull => `${pull} answers`) : ['nothing to ease']
}

function freedWords(freed: readonly Freed[], set: OrderSetting): readonly string[] {
  const groups = new Map<string, Freed[]>()
  for (const one of freed) {
    const how = `${one.act === 'ease' ? 'eased' : 'off'} in ${one.phase}${one.belayed ? ', now belayed' : ''}`
    groups.set(how, [...(groups.get(how) ?? []), one])
  }
  return [...groups].map(([how, group]) => `${freedNames(group, set).join(', ')}: ${how}`)
}

// Inner and outer buntlines freed alike are the buntlines.
function freedNames(freed: readonly Freed[], { book, sail }: OrderSetting): readonly string[] {
  const kinds = new Map<
    string,
    {
      readonly name: string
      readonly kind: string
      readonly reach: Freed['reach']
      count: number
      pair: boolean
    }
  >()
  for (const { pairKey, reach } of freed) {
    const line = book.rig.pairAt.get(pairKey)?.[0]
    if (!line) continue
    const key = `${line.host?.name ?? ''} ${line.kind} ${reach}`
    const known = kinds.get(key)
    if (known) known.count++
    else
      kinds.set(key, {
        name: lineInOrder(line, sail, book),
        kind: line.kind,
        reach,
        count: 1,
        pair: line.side !== undefined,
      })
  }
  return [...kinds.values()].map(({ name, kind, reach, count, pair }) => {
    const several = count > 1 || (pair && reach === 'all')
    const noun = count > 1 ? kind : name
    return callPhrase({ name: noun, several, reach, after: false, when: undefined })
  })
}
