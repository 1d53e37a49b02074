import type { Rope } from './ropes.ts'
import { athwart, spoken, up } from './spoken.ts'
import type { Space, TableLine, TableRail } from './tables.ts'

/** A rail of the tables, or the two that mirror each other as one. */
interface Rails {
  readonly name: string
  readonly code: string
  readonly mirrored: boolean
  readonly rails: readonly TableRail[]
  readonly rail: TableRail
}

/** The page of rails, a page of what is belayed on each that has several places, and a line for each that has one. */
export function pagesOfRails(rails: readonly TableRail[], ropes: readonly Rope[]): readonly string[] {
  if (rails.length === 0) return []
  const berths = berthsOf(ropes)
  const all = together(rails, berths)
  const several = all.filter(({ rail }) => rail.pins > 1)
  const single = all.filter(({ rail }) => rail.pins === 1)
  return [
    ['rails', ...all.flatMap(entry)].join('\n'),
    ...several.map(one => [`belay on ${spoken(one.name)}`, ...pinsOf(one, berths)].join('\n')),
    single.flatMap(one => onOnePlace(one, berths)).join('\n'),
  ]
}

const sideless = (code: string) => code.replace(/-[PS]$/, '')

/** Rails that lie alike on both sides are one entry. */
function together(rails: readonly TableRail[], berths: Berths): readonly Rails[] {
  const entries = rails.flatMap(rail => {
    const twin = rails.find(other => mirrors(rail, other))
    if (twin && rail.side === 'starboard') return []
    return [
      {
        rail,
        code: twin ? sideless(rail.code) : rail.code,
        mirrored: twin !== undefined,
        rails: twin ? [rail, twin] : [rail],
      },
    ]
  })
  const names = new Set<string>()
  return entries.map(one => {
    const name = namesFor(one, entries, berths).find(fit => fit && !names.has(fit)) ?? one.code
    names.add(name)
    return { ...one, name }
  })
}

/**
 * What a rail may be called, best first: as its note begins, if that is a rail's name; after what it stands abreast of; by its
 * kind, if no other is of that kind; after the one line it holds; else by its mark.
 */
function namesFor(
  { rail: { kind, note, first, last, pins }, code, rails }: Omit<Rails, 'name'>,
  all: readonly Omit<Rails, 'name'>[],
  berths: Berths,
): readonly (string | undefined)[] {
  const [noted = ''] = note.toLowerCase().split(',')
  const [, mast] = /\babreast the (\w+) rigging\b/.exec(noted) ?? []
  const short = kind.replace(/^pin rail$/, 'rail')
  const holds = [
    ...new Set(rails.flatMap(one => berths.get(`${one.code} 1`) ?? []).map(({ rope }) => rope.words)),
  ]
  const isBeam = first[1] * last[1] < 0
  return [
    isName(noted) && !isBeam ? noted : undefined,
    isBeam && isName(noted) ? noted.replace(/\brail$/, 'beam') : undefined,
    mast && `${mast} ${short}`,
    all.filter(other => other.rail.kind === kind).length === 1 && isName(kind) ? kind : undefined,
    pins === 1 && holds.length === 1 ? `${holds[0]} ${kind}` : undefined,
    `${code} ${kind}`,
  ]
}

const isName = (words: string) =>
  /\b(rail|rack|beam|kevel|cleat|band|bitts)$/.test(words) && words.split(' ').length <= 5

function mirrors(a: TableRail, b: TableRail): boolean {
  const across = ([x, y, z]: Space, [u, v, w]: Space) =>
    Math.hypot(x - u, y + v, z - w) < 0.015 && Math.abs(y) > 0.005
  return (
    a !== b &&
    a.code !== b.code &&
    sideless(a.code) === sideless(b.code) &&
    a.side !== b.side &&
    a.pins === b.pins &&
    across(a.first, b.first) &&
    across(a.last, b.last)
  )
}

function entry({ name, code, mirrored, rail }: Rails): readonly string[] {
  const { first, last, pins, note, kind } = rail
  const point = (at: Space) => (mirrored ? athwart(at).replace(/ (port|starboard)$/, ' out') : athwart(at))
  const lies = mirrored ? 'port and starboard' : first[1] * last[1] < 0 ? 'athwart' : ''
  const isSaid = kindIn(name) === kind
  const what = [...(isSaid ? [] : [spoken(kind)]), ...(lies ? [lies] : [])].join(' ')
  const remark = note === '' || note.toLowerCase() === name ? '' : `    # ${note}`
  const mark = `marked ${spoken(code)}`
  if (pins === 1)
    return [
      `  ${spoken(name)}${what ? `, ${what}` : ''} at ${point(first)} ${up(first[2])}, ${mark}${remark}`,
    ]
  const count = /(cleat|kevel)s?$/.exec(kind)?.[1] ?? 'pin'
  return [
    `  ${[spoken(name), what, mark].filter(Boolean).join(', ')}`,
    `    ${pins} ${count}s from ${point(first)} to ${point(last)}, ${up(first[2])}${remark}`,
  ]
}

const kindsInNames = [
  ...['pin rail', 'fife rail', 'spider band', 'bowsprit rack', 'rack', 'band', 'kevel', 'cavil'],
  ...['shroud cleat', 'cleat', 'bitts', 'bollard', 'beam'],
]

/** What the language takes a rail of a name for, if nothing else is said. */
const kindIn = (name: string) =>
  kindsInNames.find(kind => name.endsWith(kind) || name.endsWith(`${kind}s`)) ?? 'pin rail'

/** Lines by the rail and the pin they are made fast to. */
type Berths = ReadonlyMap<string, readonly Berth[]>

interface Berth {
  readonly rope: Rope
  readonly line: TableLine
}

function berthsOf(ropes: readonly Rope[]): Berths {
  const berths = new Map<string, Berth[]>()
  for (const rope of ropes)
    for (const line of rope.lines)
      if (line.pin) {
        const key = `${line.pin.rail} ${line.pin.number}`
        berths.set(key, [...(berths.get(key) ?? []), { rope, line }])
      }
  return berths
}

/** A pin that carries the two of a pair is said once; else each side is said apart. Pins that stand free are said together. */
function pinsOf({ mirrored, rails, rail }: Rails, berths: Berths): readonly string[] {
  const rows: { first: number; last: number; said: string }[] = []
  for (let pin = 1; pin <= rail.pins; pin++) {
    const [port = [], starboard = []] = rails.map(({ code }) => berths.get(`${code} ${pin}`) ?? [])
    const said = mirrored ? both(port, starboard) : single(port)
    const before = rows.at(-1)
    if (said === 'free' && before?.said === 'free') before.last = pin
    else rows.push({ first: pin, last: pin, said })
  }
  const numbers = rows.map(({ first, last }) => (first === last ? String(first) : `${first} to ${last}`))
  const width = Math.max(...numbers.filter(number => !number.includes('to')).map(({ length }) => length), 1)
  return rows.map(({ said }, i) => `  ${(numbers[i] ?? '').padEnd(width)}  ${said}`)
}

/** What is made fast where there is but one place. */
function onOnePlace(one: Rails, berths: Berths): readonly string[] {
  const { name, mirrored, rails } = one
  const [port = [], starboard = []] = rails.map(({ code }) => berths.get(`${code} 1`) ?? [])
  if (port.length + starboard.length === 0) return []
  const said = mirrored ? both(port, starboard) : single(port)
  if (/^(port|starboard|shared|free)\b|, /.test(said)) return [`belay on ${spoken(name)}`, `  1  ${said}`]
  return [`belay ${said} to ${spoken(name)}`]
}

const because = 'because the tables have them on one pin'

/** One line on a place, or more that share it. */
function single(berths: readonly Berth[]): string {
  const names = berths.map(({ rope, line }) =>
    line.side ? `${line.side} ${spoken(rope.words)}` : spoken(rope.words),
  )
  if (names.length < 2) return names[0] ?? 'free'
  return `shared by ${names.join(' and ')} ${because}`
}

function both(port: readonly Berth[], starboard: readonly Berth[]): string {
  const [one, other] = [port[0], starboard[0]]
  if (port.length === 1 && starboard.length === 1 && one?.rope === other?.rope && one?.rope.pair)
    return spoken(one.rope.words)
  if (port.length === 0 && starboard.length === 0) return 'free'
  const side = (berths: readonly Berth[]) => {
    const names = berths.map(({ rope }) => spoken(rope.words))
    return names.length < 2 ? (names[0] ?? 'free') : `shared by ${names.join(' and ')} ${because}`
  }
  return `port ${side(port)}, starboard ${side(starboard)}`
}
