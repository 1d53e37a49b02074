import type { Rope } from './ropes.ts'
import { athwart, spoken, up } from './spoken.ts'
import type { Space, TableRail } from './tables.ts'

/** A rail of the tables, or the two that mirror each other as one. */
interface Rails {
  readonly name: string
  readonly code: string
  readonly mirrored: boolean
  readonly rails: readonly TableRail[]
  readonly rail: TableRail
}

/** The page of rails, and a page of what is belayed on each. */
export function pagesOfRails(rails: readonly TableRail[], ropes: readonly Rope[]): readonly string[] {
  if (rails.length === 0) return []
  const all = together(rails)
  return [
    ['rails', ...all.flatMap(entry)].join('\n'),
    ...all.flatMap(one => {
      const pins = pinsOf(one, ropes)
      return pins.length === 0 ? [] : [[`belay on ${spoken(one.name)}`, ...pins].join('\n')]
    }),
  ]
}

const sideless = (code: string) => code.replace(/-[PS]$/, '')

/** Rails that lie alike on both sides are one entry; a note names a rail where it begins with such a name. */
function together(rails: readonly TableRail[]): readonly Rails[] {
  const names = new Set<string>()
  return rails.flatMap(rail => {
    const twin = rails.find(other => mirrors(rail, other))
    if (twin && rail.side === 'S') return []
    const code = twin ? sideless(rail.code) : rail.code
    const noted = rail.note.split(',')[0] ?? ''
    const name =
      /\b(rail|rack|beam|kevel|cleat|band|bitts)$/.test(noted) && !names.has(noted)
        ? noted
        : `${code} ${rail.kind}`
    names.add(name)
    return [{ name, code, mirrored: twin !== undefined, rails: twin ? [rail, twin] : [rail], rail }]
  })
}

function mirrors(a: TableRail, b: TableRail): boolean {
  const across = ([x, y, z]: Space, [u, v, w]: Space) =>
    Math.hypot(x - u, y + v, z - w) < 0.015 && Math.abs(y) > 0.005
  return (
    a !== b &&
    sideless(a.code) === sideless(b.code) &&
    a.pins === b.pins &&
    across(a.first, b.first) &&
    across(a.last, b.last)
  )
}

function entry({ name, code, mirrored, rail }: Rails): readonly string[] {
  const { first, last, pins, note, kind } = rail
  const point = (at: Space) => (mirrored ? athwart(at).replace(/ (port|starboard)$/, ' out') : athwart(at))
  const lies = mirrored ? ', port and starboard' : first[1] * last[1] < 0 ? ' athwart' : ''
  const said = name.endsWith(kind) && lies !== ' athwart' ? '' : `, ${spoken(kind)}`
  const remark = note === '' || note === name ? '' : `    # ${note}`
  const head = `  ${spoken(name)}${said}${lies}`
  if (pins === 1) return [`${head} at ${point(first)} ${up(first[2])}, marked ${code}${remark}`]
  return [
    `${head}, marked ${code}${remark}`,
    `    ${pins} pins from ${point(first)} to ${point(last)}, ${up(first[2])}`,
  ]
}

/** A pin that carries the two of a pair is said once; else each side is said apart. */
function pinsOf({ mirrored, rails }: Rails, ropes: readonly Rope[]): readonly string[] {
  const pins = rails[0]?.pins ?? 0
  const at = (code: string | undefined, pin: number) =>
    ropes.flatMap(rope =>
      rope.lines.filter(line => line.rail === code && line.pin === pin).map(line => ({ rope, line })),
    )
  const lines: string[] = []
  for (let pin = 1; pin <= pins; pin++) {
    const [port, starboard] = rails.map(({ code }) => at(code, pin))
    lines.push(`  ${pin}  ${mirrored ? both(port ?? [], starboard ?? []) : single(port ?? [])}`)
  }
  return lines
}

type Berths = readonly { readonly rope: Rope; readonly line: { readonly side: string | undefined } }[]

/** One line on a place, or more that share it. */
const single = (berths: Berths) => {
  const names = berths.map(({ rope, line }) => spoken(line.side ? `${line.side} ${rope.words}` : rope.words))
  if (names.length === 0) return 'free'
  return names.length === 1 ? names[0] : `shared by ${names.join(' and ')} because the tables have it so`
}

function both(port: Berths, starboard: Berths): string {
  const [one, other] = [port[0], starboard[0]]
  if (port.length === 1 && starboard.length === 1 && one?.rope === other?.rope && one?.rope.pair)
    return spoken(one.rope.words)
  if (port.length === 0 && starboard.length === 0) return 'free'
  const side = (berths: Berths) => {
    const names = berths.map(({ rope }) => spoken(rope.words))
    if (names.length < 2) return names[0] ?? 'free'
    return `shared by ${names.join(' and ')}`
  }
  return `port ${side(port)}, starboard ${side(starboard)}`
}
