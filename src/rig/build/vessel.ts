import { kilograms, metres, point3, radians } from '../../measure/index.ts'
import { type Clause, nameKey, type Page, type Statement } from '../../syntax/index.ts'
import type { Span } from '../../text/index.ts'
import type { Revision, Stability, Vessel } from '../vessel.ts'
import { clause, clausesOf } from './clauses.ts'
import { coordinates } from './place.ts'
import { finding, type Say, unknownName } from './say.ts'

const lengths = {
  waterline: 'waterline',
  'between perpendiculars': 'betweenPerpendiculars',
  'over spars': 'overSpars',
  beam: 'beam',
  draught: 'draught',
  'metacentric height': 'metacentricHeight',
} as const

const otherFacts = [
  'displaces',
  'lateral centre',
  'righting arm',
  'deck edge',
  'downflooding',
  'exposed waters',
  'partially protected waters',
  'protected waters',
  'hands',
  'measure',
  'revision',
  'rights',
  'credit',
] as const

type Draft = { -readonly [K in keyof Vessel]: Vessel[K] }

/** The vessel of the texts. A text without one is a part, and its vessel is unnamed. */
export function buildVessel(pages: readonly Page[], entry: Span, say: Say): Vessel {
  const [page, again] = pages.filter(one => one.kind === 'vessel')
  const vessel = unnamed(page?.span ?? entry)
  if (!page) return vessel
  if (again) {
    say(
      finding('name/twice', again.span, 'A second vessel is given; a text holds one.', {
        remedy: 'Keep one vessel in a text, each other in its own.',
        related: [{ at: page.span, message: 'the first is given here' }],
      }),
    )
  }
  if (page.name) vessel.name = page.name.words
  for (const fact of page.block) learn(vessel, fact, say)
  return vessel
}

function learn(vessel: Draft, fact: Statement, say: Say): void {
  if (!fact.name) return
  const key = nameKey(fact.name.words)
  const measured = clause(fact, 'measure')?.measure.value
  if (key in lengths) {
    const length = measured ?? clause(fact, 'coords')?.steps[0]?.measure.value
    if (length !== undefined) vessel[lengths[key as keyof typeof lengths]] = metres(length)
    return
  }
  switch (key) {
    case 'displaces':
      if (measured !== undefined) vessel.displacement = kilograms(measured)
      return
    case 'lateral centre': {
      const { x, z } = coordinates(clause(fact, 'coords')?.steps ?? [], 0)
      if (x !== undefined && z !== undefined) vessel.lateralCentre = point3(x, 0, z)
      return
    }
    case 'righting arm':
      vessel.stability = { ...vessel.stability, rightingArms: rightingArmsOf(fact) }
      return
    case 'deck edge':
    case 'downflooding': {
      const angle = measured === undefined ? undefined : radians(measured)
      vessel.stability = { ...vessel.stability, [key === 'downflooding' ? key : 'deckEdge']: angle }
      return
    }
    case 'exposed waters':
    case 'partially protected waters':
    case 'protected waters': {
      const waters = key.replace(/ waters$/, '') as Stability['waters']
      vessel.stability = { ...vessel.stability, waters }
      return
    }
    case 'hands':
      for (const { count, in: of } of clausesOf(fact, 'muster')) {
        if (nameKey(of.words) === 'all') vessel.handsInAll = count.value
        else vessel.handsInWatch = count.value
      }
      return
    case 'measure':
      vessel.units = clause(fact, 'in')?.names.map(name => name.words) ?? vessel.units
      return
    case 'revision':
      vessel.revision = revisionOf(fact)
      return
    case 'rights':
      vessel.rights = clause(fact, 'label')?.label.text
      return
    case 'credit':
      vessel.credits = [...vessel.credits, ...clausesOf(fact, 'label').map(({ label }) => label.text)]
      return
    default:
      learnOther(vessel, fact, key, say)
  }
}

/** 'righting arm 10 deg 0.18 m, 20 deg 0.35 m': an arm behind each angle. */
function rightingArmsOf(fact: Statement): Stability['rightingArms'] {
  const measures = clausesOf(fact, 'measure').map(({ measure }) => measure)
  return measures.flatMap((measure, i) => {
    const arm = measures[i + 1]
    if (measure.dimension !== 'angle' || arm?.dimension !== 'length') return []
    return [{ angle: radians(measure.value), arm: metres(arm.value) }]
  })
}

/** A deck's height, or a bare name: what rig she has. */
function learnOther(vessel: Draft, fact: Statement, key: string, say: Say): void {
  if (!fact.name) return
  if (key.endsWith(' deck')) {
    const { z } = coordinates(clause(fact, 'coords')?.steps ?? [], 0)
    if (z !== undefined) vessel.decks = [...vessel.decks, { name: fact.name.words, height: metres(z) }]
    return
  }
  const says: readonly Clause[] = fact.clauses
  if (says.length === 0 && vessel.rig === undefined) {
    vessel.rig = fact.name.words
    return
  }
  const facts = [...Object.keys(lengths), ...otherFacts, 'main deck']
  const otherwise = `Of a vessel one says: ${facts.join(', ')}.`
  say(unknownName('fact of a vessel', fact.name, facts, [], 'and', otherwise))
}

function revisionOf(fact: Statement): Revision | undefined {
  const mark = clause(fact, 'label')?.label.text
  const date = clause(fact, 'date')
  return mark !== undefined && date ? { mark, year: date.year, month: date.month, day: date.day } : undefined
}

const unnamed = (span: Span): Draft => ({
  name: 'Unnamed vessel',
  rig: undefined,
  waterline: undefined,
  betweenPerpendiculars: undefined,
  overSpars: undefined,
  beam: undefined,
  draught: undefined,
  displacement: undefined,
  lateralCentre: undefined,
  metacentricHeight: undefined,
  stability: { rightingArms: [], deckEdge: undefined, downflooding: undefined, waters: undefined },
  decks: [],
  handsInAll: undefined,
  handsInWatch: undefined,
  units: ['m', 'mm'],
  revision: undefined,
  rights: undefined,
  credits: [],
  span,
})
