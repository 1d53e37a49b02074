import type { Rope } from './ropes.ts'
import { hands, metres, millimetres, place, spoken } from './spoken.ts'
import type { Space, TableLine } from './tables.ts'

/** The side a line belongs to: its own, or that of its pin. */
export function sideOf({ side, lead }: TableLine): 'port' | 'starboard' | undefined {
  const y = lead[0]?.at[1] ?? 0
  return side ?? (Math.abs(y) < 0.005 ? undefined : y < 0 ? 'port' : 'starboard')
}

/** A line said whole, as where no gear has it: its head, and the lines set in under it. */
export function wholeLine(rope: Rope, ropes: readonly Rope[]): readonly string[] {
  const { line, name, pair } = rope
  const head = [
    pair ? 'pair' : 'single',
    ropeOf(line, undefined),
    ...(line.purchase.length > 0 ? [roveOf(line)] : []),
    ...(line.hands === undefined ? [] : [hands(line.hands)]),
  ]
  const answers = answersOf(rope, ropes)
  return [
    `${spoken(name)} ${head.join(', ')}`,
    ...[
      deedOf(rope),
      answers ??
        `  answered by ${line.kind === 'flag halyard' ? "the flag's weight" : "the sail's own pull"}`,
    ],
    ...(line.travel === undefined ? [] : [`  travels ${metres(line.travel)}`]),
    ...(line.lead.length < 2 ? [] : [`  ${leadOf(line)}`]),
  ].map((said, i) => (i === 0 || said.startsWith('  ') ? said : `  ${said}`))
}

export const roveOf = ({ purchase }: TableLine) => `rove ${purchase.join(' and ')}`

export const ropeOf = ({ millimetres: size, material }: TableLine, known: string | undefined) =>
  material === known || material === '' ? millimetres(size) : `${millimetres(size)} ${material}`

export function leadOf(line: TableLine): string {
  const points = line.lead.slice(1).map(({ at }) => place(at, sideOf(line)))
  const through = points.slice(0, -1)
  return `${through.length > 0 ? `through ${through.join(' then ')} ` : ''}to ${points.at(-1)}`
}

/** "against clewline and every boom guy": the lines to be eased, as one of the pair says them; undefined where there are none. */
export function answersOf(rope: Rope, ropes: readonly Rope[]): string | undefined {
  const said = ropes.flatMap(other => {
    const eased = other.lines.filter(({ id }) => rope.line.against.includes(id))
    if (eased.length === 0) return []
    const name = spoken(other.host?.name === rope.host?.name ? other.name : other.words)
    if (!other.pair) return [name]
    if (eased.length === 2) return [rope.pair ? `every ${name}` : name]
    const far = rope.pair && eased[0]?.side !== rope.line.side
    return [far ? `other ${name}` : rope.pair ? name : `${eased[0]?.side} ${name}`]
  })
  return said.length === 0 ? undefined : `against ${said.join(' and ')}`
}

/** What a haul on a kind of line does, where no gear tells it; common practice, no source. */
const deeds: Readonly<Record<string, string>> = {
  halyard: 'hoists head',
  'throat halyard': 'hoists throat',
  'peak halyard': 'hoists peak',
  downhaul: 'lowers head',
  sheet: 'draws clew aft',
  tack: 'draws tack down',
  outhaul: 'spreads clew',
  inhaul: 'brings clew in',
  clewline: 'raises clew',
  clewgarnet: 'raises clew',
  buntline: 'gathers foot',
  leechline: 'gathers leech',
  brail: 'gathers leech',
  'reef tackle': 'raises reef cringle',
  bowline: 'draws leech forward',
}

/** Kinds that act on a spar or a mast, by what they are said to act on. */
const sparDeeds: Readonly<Record<string, string>> = {
  brace: 'swings',
  lift: 'cocks',
  'topping lift': 'tops',
  vang: 'swings',
  preventer: 'steadies',
  'running backstay': 'steadies',
}

function deedOf({ line: { kind, actsOn } }: Rope): string {
  if (kind === 'flag halyard') return `hoists ensign on ${spoken(actsOn)}`
  const verb = sparDeeds[kind]
  return verb ? `${verb} ${spoken(actsOn)}` : (deeds[kind] ?? `steadies ${spoken(actsOn)}`)
}

export const apart = ([x, y, z]: Space, at: { readonly x: number; readonly y: number; readonly z: number }) =>
  Math.hypot(x - at.x, y - at.y, z - at.z)
