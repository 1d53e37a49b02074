import type { Rig } from '../rig/index.ts'

/** The deck in plan by rule, for want of recorded lines: how broad she is at each place. All in metres. */
export interface HullPlan {
  /** x of the stem and of the taffrail's middle. */
  readonly stem: number
  readonly taffrail: number
  /** Greatest half breadth. */
  readonly halfBeam: number
  /** Half breadth at x; zero before the stem and abaft the taffrail. */
  readonly halfBreadth: (x: number) => number
  /** The starboard edge from the stem aft to the middle of the taffrail, as points (x, y). */
  readonly edge: readonly (readonly [number, number])[]
}

/**
 * The outline of the deck, from length and beam alone: a full entrance to 0.28 of her length, parallel sides
 * to 0.68, and a run that narrows to a round taffrail. Shape and figures are a draughtsman's rule, not a
 * survey. Undefined where nothing in the text says how long she is.
 */
export function hullPlan(rig: Rig): HullPlan | undefined {
  const reach = lengthwise(rig)
  if (!reach) return undefined
  const { stem, taffrail, shoulder, run } = reach
  const stern = taffrail - transomDepth * (taffrail - stem)
  const shape = (x: number): number => {
    if (x < stem || x > taffrail) return 0
    if (x < shoulder) return Math.sin((Math.PI / 2) * ((x - stem) / (shoulder - stem))) ** 0.56
    if (x < run) return 1
    const aft = 1 - (1 - sternShare) * ((Math.min(x, stern) - run) / (stern - run)) ** 2.35
    return x <= stern ? aft : aft * Math.sqrt(Math.max(0, 1 - ((x - stern) / (taffrail - stern)) ** 2))
  }
  const halfBeam = widest(rig, shape, taffrail - stem)
  const halfBreadth = (x: number) => halfBeam * shape(x)
  return { stem, taffrail, halfBeam, halfBreadth, edge: edgeOf({ stem, taffrail, stern }, halfBreadth) }
}

const sternShare = 0.543
const transomDepth = 0.011

interface Lengthwise {
  readonly stem: number
  readonly taffrail: number
  readonly shoulder: number
  readonly run: number
}

function lengthwise({ hull, vessel, masts, rails, deck }: Rig): Lengthwise | undefined {
  const length = vessel.betweenPerpendiculars ?? vessel.waterline
  if (length !== undefined && length > 0) {
    const stem = hull?.stemHead?.x ?? -0.046 * length
    const taffrail = hull?.taffrail?.x ?? 1.04 * length
    if (taffrail > stem)
      return { stem, taffrail, shoulder: Math.max(stem + 0.1, 0.28 * length), run: 0.68 * length }
  }
  const known = [
    ...masts.flatMap(mast => mast.foot?.x ?? []),
    ...rails.flatMap(rail => rail.places.flatMap(place => place.at?.x ?? [])),
    ...deck.flatMap(thing => [thing.x0, thing.x1]),
  ]
  if (known.length === 0) return undefined
  const fore = known.reduce<number>((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY)
  const aft = known.reduce<number>((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY)
  const all = Math.max(aft - fore, 4)
  const stem = fore - 0.12 * all
  const taffrail = aft + 0.08 * all
  return { stem, taffrail, shoulder: stem + 0.3 * (taffrail - stem), run: stem + 0.68 * (taffrail - stem) }
}

/** Her half beam; wider where a rail would stand overboard of the ruled outline, but by a fifth at most. */
function widest({ vessel, rails }: Rig, shape: (x: number) => number, length: number): number {
  const said = vessel.beam !== undefined && vessel.beam > 0 ? vessel.beam / 2 : undefined
  const places = rails.flatMap(rail => rail.places.flatMap(place => place.at ?? []))
  const needed = places.map(({ x, y }) => (shape(x) > 0.2 ? (Math.abs(y) + 0.1) / shape(x) : 0))
  const most = needed.reduce((a, b) => Math.max(a, b), 0)
  if (said === undefined) return most > 0 ? most : length / 9
  return Math.min(Math.max(said, most), said * 1.2)
}

/** Close at the stem and the taffrail, where the edge turns quickly; evenly between. */
function edgeOf(
  { stem, taffrail, stern }: { stem: number; taffrail: number; stern: number },
  halfBreadth: (x: number) => number,
): readonly (readonly [number, number])[] {
  const long = stern - stem
  const entrance = Array.from({ length: 24 }, (_, i) => stem + 0.08 * long * (i / 24) ** 2.6)
  const side = Array.from({ length: 61 }, (_, i) => stem + 0.08 * long + 0.92 * long * (i / 60))
  const round = Array.from(
    { length: 16 },
    (_, i) => stern + (taffrail - stern) * Math.sin((Math.PI / 2) * ((i + 1) / 16)),
  )
  return [...entrance, ...side, ...round].map(x => [x, x >= taffrail ? 0 : halfBreadth(x)] as const)
}
