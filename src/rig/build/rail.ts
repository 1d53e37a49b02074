import { type Point3, point3 } from '../../measure/index.ts'
import { nameKey, type Statement, type Step } from '../../syntax/index.ts'
import type { Place, Rail, RailLie, Side } from '../rail.ts'
import { clause, clausesOf } from './clauses.ts'
import { coordinates } from './place.ts'
import { capitalised, finding, type Say } from './say.ts'

/** More places than this in one rail is a slip of the pen, and is met before it costs memory. */
const mostPlaces = 500

/** The rails an entry declares: two where it stands port and starboard, else one. */
export function buildRails(entry: Statement, say: Say): readonly Rail[] {
  if (!entry.name) return []
  const count = placesIn(entry, say)
  const sides: readonly (Side | undefined)[] = clause(entry, 'sides') ? ['port', 'starboard'] : [undefined]
  const name = nameKey(entry.name.words)
  const mark = clause(entry, 'marked')?.code.words ?? initials(name)
  return sides.map(side => {
    const [first, last] = endsOf(entry, side)
    const code = side ? `${mark}-${side === 'port' ? 'P' : 'S'}` : mark
    return {
      code,
      mark,
      name,
      label: clause(entry, 'called')?.label.text ?? capitalised(entry.name?.words ?? name),
      kind: kindOf(entry, name),
      lie: side ?? lieOf(entry, first, last),
      mirrored: side !== undefined,
      first,
      last,
      places: placesOf(code, count, side, first, last),
      station: undefined,
      span: entry.name?.span ?? entry.span,
    }
  })
}

function placesIn(entry: Statement, say: Say): number {
  const pins = clausesOf(entry, 'count').find(one =>
    /^(pin|place|cleat)s?$/.test(nameKey(one.of?.words ?? '')),
  )
  if (!pins) return 1
  if (pins.count.value >= 1 && pins.count.value <= mostPlaces && Number.isInteger(pins.count.value)) {
    return pins.count.value
  }
  say(
    finding(
      'belay/pin-count',
      pins.count.span,
      `A rail has from 1 to ${mostPlaces} pins, not ${pins.count.written}.`,
      {
        remedy: 'Give the number of its pins, or write it as several rails.',
      },
    ),
  )
  return 1
}

const initials = (name: string) =>
  name
    .split(' ')
    .map(word => word[0]?.toUpperCase() ?? '')
    .join('')

const kinds = [
  'pin rail',
  'fife rail',
  'spider band',
  'bowsprit rack',
  'rack',
  'band',
  'kevel',
  'cavil',
  'cleat',
  'bitts',
  'bollard',
  'beam',
]

function kindOf(entry: Statement, name: string): string {
  const said = clause(entry, 'class')
  if (said) return nameKey(said.name.words)
  return kinds.find(kind => name.endsWith(kind)) ?? 'pin rail'
}

/** First and last place. A share of the way is said once for both: "…, 2.70 m up". */
function endsOf(entry: Statement, side: Side | undefined): readonly [Point3 | undefined, Point3 | undefined] {
  const outward = side === 'port' ? -1 : 1
  const up = clause(entry, 'coords')?.steps ?? []
  const point = (steps: readonly Step[]) => {
    const { x, y, z } = coordinates([...up, ...steps], outward)
    return x === undefined || z === undefined ? undefined : point3(x, y ?? 0, z)
  }
  const extent = clause(entry, 'fromTo')
  if (extent) return [point(extent.from.steps), point(extent.to.steps)]
  const at = clause(entry, 'at')
  const only = at ? point(at.place.steps) : point([])
  return [only, only]
}

function lieOf(entry: Statement, first: Point3 | undefined, last: Point3 | undefined): RailLie {
  if (clause(entry, 'athwart')) return 'athwart'
  if (clause(entry, 'round')) return 'round'
  if (!first || !last) return 'centre'
  if (first.y * last.y < 0) return 'athwart'
  return sideOf(first.y + last.y)
}

/** The side a point lies on; within a centimetre of the centreline it is on neither. */
export function sideOf(y: number): Side | 'centre' {
  if (Math.abs(y) < 0.01) return 'centre'
  return y < 0 ? 'port' : 'starboard'
}

function placesOf(
  code: string,
  count: number,
  side: Side | undefined,
  first: Point3 | undefined,
  last: Point3 | undefined,
): readonly Place[] {
  return Array.from({ length: count }, (_, index) => {
    const share = count > 1 ? index / (count - 1) : 0
    const at = first && last && between(first, last, share)
    return {
      address: `pin.${code}.${index + 1}`,
      rail: code,
      number: index + 1,
      at,
      side: side ?? (at ? sideOf(at.y) : 'centre'),
      lines: [],
      shared: false,
      keptFree: false,
      span: undefined,
    }
  })
}

const between = (a: Point3, b: Point3, share: number): Point3 =>
  point3(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share, a.z + (b.z - a.z) * share)
