import { metres } from '../../measure/index.ts'
import { nameKey, type Page, type Statement } from '../../syntax/index.ts'
import type { Hull } from '../hull.ts'
import { clause } from './clauses.ts'
import { coordinates } from './place.ts'
import { type Say, unknownName } from './say.ts'

const points = {
  'lowest sheer': 'lowestSheer',
  'stem head': 'stemHead',
  billet: 'billet',
  knuckle: 'knuckle',
  taffrail: 'taffrail',
  'dolphin striker': 'dolphinStriker',
} as const
const heights = { 'bow sheer': 'bowSheer', 'stern sheer': 'sternSheer' } as const
const stations = { forefoot: 'forefoot', sternpost: 'sternpost' } as const
const lengths = { bulwark: 'bulwark', 'keel drag': 'keelDrag' } as const
const others = ['forecastle', 'forecastle rail'] as const

const known = [points, heights, stations, lengths].flatMap(one => Object.keys(one)).concat(others)

type Draft = { -readonly [K in keyof Hull]: Hull[K] }

/** The hull's numbers as the text gives them, or undefined where there is no page of the hull. */
export function buildHull(pages: readonly Page[], say: Say): Hull | undefined {
  const page = pages.find(one => one.kind === 'hull')
  if (!page) return undefined
  const hull = bare(page)
  const facts = pages.filter(one => one.kind === 'hull').flatMap(one => one.block)
  const rail = facts.find(fact => nameKey(fact.name?.words ?? '') === 'forecastle rail')
  for (const fact of facts) learn(hull, fact, rail, say)
  return hull
}

function learn(hull: Draft, fact: Statement, forecastleRail: Statement | undefined, say: Say): void {
  if (!fact.name) return
  const key = nameKey(fact.name.words)
  const { x, z } = coordinates(clause(fact, 'coords')?.steps ?? [], 0)
  const length = clause(fact, 'measure')?.measure.value
  if (key in points) {
    if (x !== undefined && z !== undefined)
      hull[points[key as keyof typeof points]] = { x: metres(x), z: metres(z) }
  } else if (key in heights) {
    if (z !== undefined) hull[heights[key as keyof typeof heights]] = metres(z)
  } else if (key in stations) {
    if (x !== undefined) hull[stations[key as keyof typeof stations]] = metres(x)
  } else if (key in lengths) {
    if (length !== undefined) hull[lengths[key as keyof typeof lengths]] = metres(length)
  } else if (key === 'forecastle') {
    hull.forecastle = forecastleOf(fact, forecastleRail)
  } else if (key !== 'forecastle rail') {
    say(unknownName('number of the hull', fact.name, known))
  }
}

function forecastleOf(fact: Statement, rail: Statement | undefined): Hull['forecastle'] {
  const extent = clause(fact, 'fromTo')
  if (!extent) return undefined
  const from = coordinates(extent.from.steps, 0)
  const to = coordinates(extent.to.steps, 0)
  const height = to.z ?? coordinates(clause(fact, 'coords')?.steps ?? [], 0).z
  if (from.x === undefined || to.x === undefined || height === undefined) return undefined
  const above = rail && clause(rail, 'measure')?.measure.value
  return {
    from: metres(from.x),
    to: metres(to.x),
    deck: metres(height),
    rail: above === undefined ? undefined : metres(above),
  }
}

const bare = ({ span }: Page): Draft => ({
  lowestSheer: undefined,
  bowSheer: undefined,
  sternSheer: undefined,
  bulwark: undefined,
  stemHead: undefined,
  billet: undefined,
  forefoot: undefined,
  keelDrag: undefined,
  sternpost: undefined,
  knuckle: undefined,
  taffrail: undefined,
  dolphinStriker: undefined,
  forecastle: undefined,
  span,
})
