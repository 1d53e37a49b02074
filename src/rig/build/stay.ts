import { type Figure, metres, type Point3 } from '../../measure/index.ts'
import { nameKey, type Statement } from '../../syntax/index.ts'
import type { Mast } from '../mast.ts'
import type { StandingRigging } from '../stay.ts'
import { clause, clausesOf, conjectureOf } from './clauses.ts'
import { locate } from './place.ts'
import { capitalised } from './say.ts'
import { mastsThing } from './thing.ts'

/** A stay, or a bank of shrouds or backstays, from its entry. Banks are given for the starboard side. */
export function buildStay(entry: Statement, masts: readonly Mast[]): StandingRigging {
  const name = nameKey(entry.name?.words ?? '')
  const extent = clause(entry, 'fromTo')
  const bank = name.endsWith('backstays') ? 'backstays' : name.endsWith('shrouds') ? 'shrouds' : undefined
  const ground = { outward: bank ? 1 : 0, thing: mastsThing(name, masts) } as const
  const thick = clause(entry, 'thick')?.measure.value
  const base = {
    name,
    label: clause(entry, 'called')?.label.text ?? capitalised(entry.name?.words ?? ''),
    from: extent && givenPoint(locate(extent.from, ground)),
    to: extent && givenPoint(locate(extent.to, ground)),
    diameter: thick === undefined ? undefined : metres(thick),
    ...conjectureOf(entry),
    span: entry.name?.span ?? entry.span,
  }
  if (!bank) return { ...base, kind: 'stay' }
  const apart = clause(entry, 'apart')?.measure.value
  const count = clausesOf(entry, 'count')[0]?.count.value ?? 1
  return { ...base, kind: bank, count, apart: apart === undefined ? undefined : metres(apart) }
}

const givenPoint = (figure: Figure<Point3>): Point3 | undefined => (figure.known ? figure.value : undefined)
