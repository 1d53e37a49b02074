import type { Rail } from '../../rig/index.ts'
import type { RailView } from '../rail-view.ts'
import { live } from './page.ts'
import type { RailSpot } from './rail-drawing.ts'
import { partWidth, type RailPart, railGap, type Slot, slotWidth, type Tier } from './rail-tiers.ts'

export type ChartSide = 'port' | 'starboard'

/** A rail at its spot on a page; the key and the blank are both drawn from it, so that their pins agree. */
export interface PlacedRail {
  readonly part: RailPart
  readonly spot: RailSpot
}

/** One tier of a page: how it is faced, its rails, and where nothing stands. */
export interface PlacedTier {
  readonly subtitleAt: number
  readonly rails: readonly PlacedRail[]
  readonly free: readonly Room[]
}

/** An empty part of a page. */
export interface Room {
  readonly x: number
  readonly width: number
  readonly top: number
  readonly bottom: number
}

// The longest name over a pin leaves two lines above it for how the rails are faced.
const heights = [
  { subtitle: 32.5, pins: 92.8, longestName: 47 },
  { subtitle: 114.2, pins: 176, longestName: 49 },
] as const

/** Of a tier that has the page to itself. */
const alone = { subtitle: 32.5, pins: 112, longestName: 66 } as const

type Height = (typeof heights)[number] | typeof alone

/** Where the rule between two tiers stands. */
export const tierRule = 108.9

/** The tiers of an opening as one of its pages has them. Port has its fore-edge to the left, starboard to the right. */
export function placedTiers(tiers: readonly Tier[], side: ChartSide): readonly PlacedTier[] {
  return tiers.flatMap((tier, index) => {
    const height = tiers.length === 1 ? alone : heights[index]
    return height ? [placedTier(tier, side, height)] : []
  })
}

/** The largest empty part of a page that is wide enough for words. */
export function largestRoom(tiers: readonly PlacedTier[]): Room | undefined {
  const below: readonly Room[] =
    tiers.length === 1 ? [{ x: 0, width: live.width, top: alone.pins + 22, bottom: 189 }] : []
  const rooms = [...tiers.flatMap(tier => tier.free), ...below].filter(room => room.width >= 46)
  const area = (room: Room) => room.width * (room.bottom - room.top)
  return rooms.reduce<Room | undefined>(
    (best, room) => (best && area(best) >= area(room) ? best : room),
    undefined,
  )
}

function placedTier(tier: Tier, side: ChartSide, height: Height): PlacedTier {
  const rails: PlacedRail[] = []
  for (const { slot, x, width } of slotPlaces(tier)) {
    const part = slot[side]
    if (!part) continue
    const left = side === 'port' ? x + width - partWidth(part, tier.pitch) : live.width - x - width
    rails.push({ part, spot: { x: left, y: height.pins, pitch: tier.pitch, nameRoom: height.longestName } })
  }
  rails.sort((a, b) => a.spot.x - b.spot.x)
  return { subtitleAt: height.subtitle, rails, free: freeBeside(rails, height) }
}

// From the fore-edge to the spine, spread over the page; a slot by itself stands at the spine.
function slotPlaces({ slots, pitch }: Tier): readonly { slot: Slot; x: number; width: number }[] {
  const widths = slots.map(slot => slotWidth(slot, pitch))
  const all = widths.reduce((total, width) => total + width, 0)
  const spread = slots.length > 1 ? (live.width - all) / (slots.length - 1) : 0
  const apart = Math.max(railGap, spread)
  let x = slots.length > 1 ? 0 : live.width - all
  return slots.map((slot, index) => {
    const width = widths[index] ?? 0
    const place = { slot, x, width }
    x += width + apart
    return place
  })
}

function freeBeside(rails: readonly PlacedRail[], { subtitle, pins }: Height): readonly Room[] {
  const edges = rails.flatMap(({ part, spot }) => [spot.x, spot.x + partWidth(part, spot.pitch)])
  const ends = [0 - railGap, ...edges, live.width + railGap]
  const rooms: Room[] = []
  for (let index = 0; index < ends.length; index += 2) {
    const x = (ends[index] ?? 0) + railGap
    const width = (ends[index + 1] ?? 0) - railGap - x
    rooms.push({ x, width, top: subtitle + 9, bottom: pins + 9 })
  }
  return rooms
}

/**
 * How the rails of a tier are faced, in ways of saying it that grow shorter: whoever sets it takes the first
 * that has room.
 */
export function facingWords(
  rails: readonly PlacedRail[],
  side: ChartSide,
): readonly [string, string, string] {
  const label = (rail: Rail, index: number) => (index === 0 ? rail.label : rail.name)
  return [
    facing(rails, label, ({ bow, sentence }) => {
      const atSpine = bow === (side === 'port' ? 'right' : 'left') ? ', at the spine' : ''
      return `${sentence.replace('facing it', 'facing the rail')}${bow ? `, bow to your ${bow}${atSpine}` : ''}`
    }),
    facing(rails, label, briefly),
    facing(rails, rail => rail.code, briefly),
  ]
}

const briefly = ({ bow, sentence }: RailView): string => {
  const [from = sentence] = sentence.split(/, | from the deck/)
  return `${from.replace(/facing it|facing the rail/, 'from the deck')}${bow ? `, bow ${bow}` : ''}`
}

function facing(
  rails: readonly PlacedRail[],
  named: (rail: Rail, index: number) => string,
  wayOf: (view: RailView) => string,
): string {
  const groups = new Map<string, Rail[]>()
  for (const { part } of rails) {
    const way = wayOf(part.view)
    const group = groups.get(way)
    if (group) group.push(part.rail)
    else groups.set(way, [part.rail])
  }
  return [...groups].map(([way, group]) => `${listed(group.map(named))}, ${way}.`).join(' ')
}

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
