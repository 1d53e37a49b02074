import { type Point3, point3 } from '../../measure/index.ts'
import { nameKey, type Place as Spoken, type Statement } from '../../syntax/index.ts'
import { type Mast, onMast } from '../mast.ts'
import type { Place, Rail, RailLie, Side } from '../rail.ts'
import { clause, clausesOf } from './clauses.ts'
import { coordinates, locate, moved } from './place.ts'
import { capitalised, finding, type Say, unknownName } from './say.ts'
import { mastsThing } from './thing.ts'

/** More places than this in one rail is a slip of the pen, and is met before it costs memory. */
const mostPlaces = 500

/** The rails an entry declares: two where it stands port and starboard, else one. */
export function buildRails(entry: Statement, masts: readonly Mast[], say: Say): readonly Rail[] {
  if (!entry.name) return []
  const pins = pinsOf(entry, placesIn(entry, say), say)
  const ring = ringOf(entry, masts, say)
  const sides: readonly (Side | undefined)[] = clause(entry, 'sides') ? ['port', 'starboard'] : [undefined]
  const name = nameKey(entry.name.words)
  const mark = clause(entry, 'marked')?.code.words ?? initials(name)
  return sides.map(side => {
    const [first, last] = ring
      ? [ring(0), ring((pins.length - 1) / pins.length)]
      : endsOf(entry, name, side, masts)
    const share = (index: number) => (pins.length > 1 ? index / (pins.length - 1) : 0)
    const at = (index: number) =>
      ring ? ring(index / pins.length) : first && last && between(first, last, share(index))
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
      places: pins.map((pin, index) => placeOf(code, pin, index, side, at(index))),
      station: undefined,
      span: entry.name?.span ?? entry.span,
    }
  })
}

function placesIn(entry: Statement, say: Say): number {
  const pins = clausesOf(entry, 'count').find(
    one =>
      /^(pin|place|cleat|kevel|bitt)s?$/.test(nameKey(one.of?.words ?? '')) && !isBetween(one.count.written),
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

const isBetween = (written: string) => /[a-z]$/i.test(written)

/** The pins as they are numbered: from 1, and "pin 4a" between 4 and 5. */
function pinsOf(entry: Statement, count: number, say: Say): readonly string[] {
  const between = clausesOf(entry, 'count').filter(({ count: { written } }) => isBetween(written))
  const after = (pin: number) =>
    between
      .filter(one => one.count.value === pin)
      .map(one => one.count.written.toLowerCase())
      .sort()
  const pins: string[] = []
  for (let pin = 1; pins.length < count; pin++)
    pins.push(...[String(pin), ...after(pin)].slice(0, count - pins.length))
  for (const { count: pin } of between) {
    if (pins.includes(pin.written.toLowerCase())) continue
    say(
      finding(
        'belay/pin-count',
        pin.span,
        `There is no place for a pin ${pin.written} among ${count} pins.`,
        {
          remedy: `The pins said in between count too: say how many there are in all.`,
        },
      ),
    )
  }
  return pins
}

/** Clear of the mast's wood by this much, the pins of a band stand (common practice, no source). */
const standOff = 0.1

/** The places of a band round a mast, by the share of the way round: from right forward, by starboard. */
function ringOf(
  entry: Statement,
  masts: readonly Mast[],
  say: Say,
): ((share: number) => Point3 | undefined) | undefined {
  const round = clause(entry, 'round')?.name
  if (!round) return undefined
  const mast = masts.find(one => [one.name, one.word].includes(nameKey(round.words)))
  if (!mast) {
    say(
      unknownName(
        'mast',
        round,
        masts.map(one => one.name),
      ),
    )
    return undefined
  }
  const height = coordinates(clause(entry, 'coords')?.steps ?? clause(entry, 'at')?.place.steps ?? [], 0).z
  const axis = height === undefined ? undefined : onMast(mast, height)
  const section = mast.sections.find(
    one => one.head !== undefined && height !== undefined && one.head.z >= height,
  )
  const radius = (section?.diameter ?? 0.3) / 2 + standOff
  return share =>
    axis &&
    point3(axis.x - radius * Math.cos(2 * Math.PI * share), radius * Math.sin(2 * Math.PI * share), axis.z)
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
  'shroud cleat',
  'cleat',
  'bitts',
  'bollard',
  'beam',
]

function kindOf(entry: Statement, name: string): string {
  const said = clause(entry, 'class')
  if (said) return nameKey(said.name.words)
  return kinds.find(kind => name.endsWith(kind) || name.endsWith(`${kind}s`)) ?? 'pin rail'
}

/**
 * First and last place, in the ship's axes or counted from a mast: "from mast 0.60 m forward 4.90 m out to ...". A share
 * of the way is said once for both: "…, 2.70 m up".
 */
function endsOf(
  entry: Statement,
  name: string,
  side: Side | undefined,
  masts: readonly Mast[],
): readonly [Point3 | undefined, Point3 | undefined] {
  const ground = { outward: side === 'port' ? -1 : 1, thing: mastsThing(name, masts) } as const
  const up = clause(entry, 'coords')?.steps ?? []
  const point = (end: Spoken) => {
    const at = locate(moved({ ...end, steps: up }, end.steps), ground)
    return at.known ? at.value : undefined
  }
  const extent = clause(entry, 'fromTo')
  if (extent) return [point(extent.from), point(extent.to)]
  const only = point(
    clause(entry, 'at')?.place ?? { from: undefined, steps: [], abreast: undefined, span: entry.span },
  )
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

function placeOf(
  code: string,
  pin: string,
  index: number,
  side: Side | undefined,
  at: Point3 | undefined,
): Place {
  return {
    address: `pin.${code}.${pin}`,
    rail: code,
    number: index + 1,
    pin,
    at,
    side: side ?? (at ? sideOf(at.y) : 'centre'),
    lines: [],
    shared: false,
    keptFree: false,
    span: undefined,
  }
}

const between = (a: Point3, b: Point3, share: number): Point3 =>
  point3(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share, a.z + (b.z - a.z) * share)
