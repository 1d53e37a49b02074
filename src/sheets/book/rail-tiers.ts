import type { Finding, Found } from '../../findings/index.ts'
import type { Place, Rail, Rig } from '../../rig/index.ts'
import { middleOf, type RailView, railView } from '../rail-view.ts'
import type { Book } from './book.ts'
import { live } from './page.ts'

/** A rail as one page of the chart shows it, or the part of a long one between two breaks. */
export interface RailPart {
  readonly rail: Rail
  readonly view: RailView
  /** As they follow one another before the eye. */
  readonly places: readonly Place[]
  /** Whether the rail goes on beyond this end. */
  readonly goesOnLeft: boolean
  readonly goesOnRight: boolean
}

/** What stands at one spot of both pages of an opening: a rail and its mirror, or a rail by itself. */
export interface Slot {
  readonly port: RailPart | undefined
  readonly starboard: RailPart | undefined
}

/** Rails side by side, from the fore-edge to the spine, their pins evenly apart by `pitch` millimetres. */
export interface Tier {
  readonly slots: readonly Slot[]
  readonly pitch: number
}

/** Room for the point of a rail that ends toward the bow, and between two rails. */
export const railPoint = 3
export const railGap = 8

const pitches = { widest: 11.25, shared: 5, smallest: 3.8 } as const
const tiersOnPage = 2

/** The rails of a station, shared out over openings of the book, two tiers to a page. */
export function chartOpenings({
  rig,
  station,
}: Pick<Book, 'rig' | 'station'>): Found<readonly (readonly Tier[])[]> {
  const rails = station.rails.flatMap(code => rig.railAt.get(code) ?? [])
  const parted = slotsOf(rails, rig).map(slot => partedAtSails(slot, rig))
  const tiers = evened(packed(parted.flatMap(found => found.value)))
  const openings: Tier[][] = []
  for (const tier of tiers) {
    const last = openings.at(-1)
    if (last && last.length < tiersOnPage) last.push(tier)
    else openings.push([tier])
  }
  return { value: openings, findings: parted.flatMap(found => found.findings) }
}

/** How wide a slot is: its pins, and the point of the end toward the bow. */
export function slotWidth(slot: Slot, pitch: number): number {
  const parts = [slot.port, slot.starboard].filter(part => part !== undefined)
  return Math.max(0, ...parts.map(part => partWidth(part, pitch)))
}

export const partWidth = (part: RailPart, pitch: number): number =>
  part.places.length * pitch + (part.view.bow === undefined ? 0 : railPoint)

// Mirrored rails share a slot; rails without a mirror are put two to a slot, one a page, so as to save paper.
function slotsOf(rails: readonly Rail[], rig: Rig): readonly Slot[] {
  const slots: { port: RailPart | undefined; starboard: RailPart | undefined }[] = []
  const byMark = new Map<string, (typeof slots)[number]>()
  for (const rail of rails) {
    const part = wholeRail(rail, rig)
    const mirror = rail.mirrored ? byMark.get(rail.mark) : undefined
    const side = pageSide(rail)
    if (mirror && side && mirror[side] === undefined) mirror[side] = part
    else if (side) {
      const slot = { port: undefined, starboard: undefined, [side]: part }
      slots.push(slot)
      if (rail.mirrored) byMark.set(rail.mark, slot)
    } else {
      const lone = slots.find(slot => slot.port && !pageSide(slot.port.rail) && !slot.starboard)
      if (lone) lone.starboard = part
      else slots.push({ port: part, starboard: undefined })
    }
  }
  return slots
}

/** The page of an opening a rail belongs on by its side; undefined for one that is on neither. */
export const pageSide = (rail: Rail): 'port' | 'starboard' | undefined =>
  rail.lie === 'port' || rail.lie === 'starboard' ? rail.lie : undefined

function wholeRail(rail: Rail, rig: Rig): RailPart {
  const view = railView(rail, rig)
  return { rail, view, places: view.leftToRight, goesOnLeft: false, goesOnRight: false }
}

const capacity = Math.floor((live.width - railPoint) / pitches.smallest)

// A rail too long for a page goes on over the next, parted where neither side parts a sail's gear.
function partedAtSails(slot: Slot, rig: Rig): Found<readonly Slot[]> {
  const numbers = [...new Set(partsOf(slot).flatMap(part => part.places.map(place => place.number)))]
  numbers.sort((a, b) => a - b)
  const count = Math.ceil(numbers.length / capacity)
  if (count < 2) return { value: [slot], findings: [] }
  const cuts = cutsIn(numbers, count, slot, rig)
  const value = cuts.map((from, index) => {
    const until = cuts[index + 1] ?? Number.POSITIVE_INFINITY
    return { port: between(slot.port, from, until), starboard: between(slot.starboard, from, until) }
  })
  const [{ rail } = { rail: undefined }] = partsOf(slot)
  return { value, findings: rail ? [splitFinding(rail, count)] : [] }
}

const partsOf = (slot: Slot): readonly RailPart[] =>
  [slot.port, slot.starboard].filter(part => part !== undefined)

// The first number of each part. Each cut is sought outward from an even share, within what still fits.
function cutsIn(numbers: readonly number[], count: number, slot: Slot, rig: Rig): readonly number[] {
  const cuts = [0]
  for (let part = 1; part < count; part++) {
    const even = Math.round((numbers.length * part) / count)
    const previous = cuts[part - 1] ?? 0
    const rest = count - part
    const fits = (at: number) =>
      at > previous && at - previous <= capacity && numbers.length - at <= rest * capacity
    const tries = Array.from({ length: numbers.length }, (_, away) => [even - away, even + away]).flat()
    const clean = tries.find(at => fits(at) && !partsGear(numbers[at - 1], numbers[at], slot, rig))
    cuts.push(clean ?? tries.find(fits) ?? even)
  }
  return cuts.map(at => numbers[at] ?? 0)
}

function partsGear(before: number | undefined, after: number | undefined, slot: Slot, rig: Rig): boolean {
  return partsOf(slot).some(part => {
    const host = (number: number | undefined) =>
      part.places
        .find(place => place.number === number)
        ?.lines.map(address => rig.lineAt.get(address)?.host?.name)
        .find(name => name !== undefined)
    const first = host(before)
    return first !== undefined && first === host(after)
  })
}

function between(part: RailPart | undefined, from: number, until: number): RailPart | undefined {
  if (!part) return undefined
  const isIn = (place: Place | undefined) =>
    place !== undefined && place.number >= from && place.number < until
  const places = part.places.filter(isIn)
  if (places.length === 0) return undefined
  return {
    ...part,
    places,
    goesOnLeft: part.goesOnLeft || !isIn(part.places[0]),
    goesOnRight: part.goesOnRight || !isIn(part.places.at(-1)),
  }
}

const splitFinding = (rail: Rail, parts: number): Finding => ({
  rule: 'sheet/rail-split',
  severity: 'note',
  at: rail.span,
  message: `The ${rail.name} has ${rail.places.length} pins, more than a page of the handbook holds: its chart is in ${parts} parts.`,
  related: [],
})

// First into a tier that still has room for it at a comfortable pitch, else into a tier of its own.
function packed(slots: readonly Slot[]): readonly Tier[] {
  const tiers: Slot[][] = []
  for (const slot of slots) {
    const room = tiers.find(tier => pitchOf([...tier, slot]) >= pitches.shared)
    if (room) room.push(slot)
    else tiers.push([slot])
  }
  return tiers.map(tier => ({ slots: tier.toSorted(aftFirst), pitch: pitchOf(tier) }))
}

// A page holds two tiers. Where the last would stand half empty, its rails are given one each; so few pins that
// two tiers would be empty too stay together in the middle of the page.
function evened(tiers: readonly Tier[]): readonly Tier[] {
  const last = tiers.at(-1)
  if (tiers.length % tiersOnPage === 0 || !last || last.slots.length < 2 || pinsOf(last) < worthTwoTiers)
    return tiers
  const half = Math.ceil(last.slots.length / 2)
  const parts = [last.slots.slice(half), last.slots.slice(0, half)]
  return [...tiers.slice(0, -1), ...parts.map(slots => ({ slots, pitch: pitchOf(slots) }))]
}

const worthTwoTiers = 6

const longest = (slot: Slot): number => Math.max(0, ...partsOf(slot).map(part => part.places.length))

/** Pins beside each other on one page. */
export const pinsOf = ({ slots }: Pick<Tier, 'slots'>): number =>
  slots.reduce((total, slot) => total + longest(slot), 0)

// The bow is at the spine, so what stands further aft is nearer the fore-edge.
const aftFirst = (a: Slot, b: Slot): number => placeAlong(b) - placeAlong(a)

function placeAlong(slot: Slot): number {
  const [part] = partsOf(slot)
  return (part && middleOf(part.rail)?.x) ?? 0
}

function pitchOf(slots: readonly Slot[]): number {
  const points =
    slots.filter(slot => partsOf(slot).some(part => part.view.bow !== undefined)).length * railPoint
  const gaps = (slots.length - 1) * railGap
  return Math.min(pitches.widest, (live.width - gaps - points) / Math.max(1, pinsOf({ slots })))
}
