import { aboveTackle, velocityRatio } from '../rig/index.ts'
import type { Rope } from './ropes.ts'
import { hands, metres, millimetres, place, spoken } from './spoken.ts'
import type { Side, Space, TableLine } from './tables.ts'

/** The side a line belongs to: its own, or that of its pin. */
export function sideOf({ side, lead, pin }: TableLine): Side | undefined {
  const y = (pin && lead[0]?.at[1]) ?? 0
  return side ?? (Math.abs(y) < 0.005 ? undefined : y < 0 ? 'port' : 'starboard')
}

/** A line said whole, as where no gear has it: its head, and the lines set in under it. */
export function wholeLine(rope: Rope, ropes: readonly Rope[]): readonly string[] {
  const { line, name, pair } = rope
  const head = [
    pair ? 'pair' : 'single',
    ...(rope.line.millimetres === undefined ? [] : [ropeOf(line, undefined)]),
    ...(line.purchase.length > 0 ? [roveOf(line)] : []),
    ...(line.hands === undefined ? [] : [hands(line.hands)]),
  ]
  return [
    `${spoken(name)} ${head.join(', ')}`,
    ...deedAndTravel(rope).map(said => `  ${said}`),
    ...(line.against === undefined ? [] : [`  ${answersOf(rope, ropes) ?? answeredBy(line)}`]),
    ...(line.lead.length < 2 ? [] : [`  ${leadOf(line)}`]),
  ]
}

function deedAndTravel(rope: Rope): readonly string[] {
  const { travel } = rope.line
  const deed = deedOf(rope)
  if (travel === undefined) return [deed]
  const travels = `travels ${metres(travel)}`
  return deed.startsWith('#') ? [deed, travels] : [`${deed}, ${travels}`]
}

/** What answers a line for which nothing is eased. */
export function answeredBy({ kind }: TableLine): string {
  if (kind === 'flag halyard') return "answered by the flag's weight"
  if (/^(throat|peak) halyard$/.test(kind)) return 'answered by the weight of the gaff'
  return kind === 'halyard' || kind === 'tricing line'
    ? "answered by the sail's own weight"
    : "answered by the sail's own pull"
}

export const roveOf = (line: TableLine) =>
  `rove ${line.purchase.join(' and ')}${standsBelow(line) ? ' below' : ''}`

/** Whether the tackle stands at the foot of its lead: its last stretch is told to be of one part. */
export function standsBelow({ purchase, lead }: TableLine): boolean {
  const end = lead.length > 1 ? lead.at(-1) : undefined
  return end?.parts === 1 && (velocityRatio(purchase) ?? 1) > 1 && aboveTackle(purchase) === undefined
}

/** "16 mm spun polyester", without its material where that is known; undefined where the table tells no thickness. */
export function ropeOf(
  { millimetres: size, material }: TableLine,
  known: string | undefined,
): string | undefined {
  if (size === undefined) return undefined
  return material === known || material === '' ? millimetres(size) : `${millimetres(size)} ${material}`
}

export function leadOf(line: TableLine): string {
  const points = line.lead.slice(1).map(({ at }) => place(at, sideOf(line)))
  const through = points.slice(0, -1)
  return `${through.length > 0 ? `through ${through.join(' then ')} ` : ''}to ${points.at(-1)}`
}

/** "against clewline and every boom guy": the lines to be eased, as one of the pair says them; undefined where there are none. */
export function answersOf(rope: Rope, ropes: readonly Rope[]): string | undefined {
  const said = ropes.flatMap(other => {
    const eased = other.lines.filter(({ id }) => rope.line.against?.includes(id))
    if (eased.length === 0) return []
    const name = spoken(other.host?.name === rope.host?.name ? other.name : other.words)
    if (!other.pair) return [name]
    if (eased.length === 2) return [rope.pair ? `every ${name}` : name]
    const far = rope.pair && eased[0]?.side !== rope.line.side
    return [far ? `other ${name}` : rope.pair ? name : `${eased[0]?.side} ${name}`]
  })
  return said.length === 0 ? undefined : `against ${said.join(' and ')}`
}

/** What a haul on a kind of line does, where no gear tells it; common practice, no source. Of any other it is to be given. */
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
  'slab line': 'gathers foot',
  'tricing line': 'raises tack',
  'heel rope': 'draws bowsprit forward',
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
  guy: 'steadies',
  'boom guy': 'steadies',
  'gaff downhaul': 'lowers',
  'running backstay': 'steadies',
}

function deedOf({ line: { kind, actsOn } }: Rope): string {
  if (kind === 'flag halyard') return `hoists ensign on ${spoken(actsOn)}`
  const verb = sparDeeds[kind] ?? (/(mast|boom|gaff|bowsprit)$/.test(actsOn) ? 'steadies' : undefined)
  if (kind === 'halyard' && actsOn.endsWith('yard')) return 'hoists yard'
  return deeds[kind] ?? (verb ? `${verb} ${spoken(actsOn)}` : '# what a haul on it does is to be given')
}

export const apart = ([x, y, z]: Space, at: { readonly x: number; readonly y: number; readonly z: number }) =>
  Math.hypot(x - at.x, y - at.y, z - at.z)
