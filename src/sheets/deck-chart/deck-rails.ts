import type { Place, Rail, Rig } from '../../rig/index.ts'
import { boundsOf, grown, type Rect } from '../plane.ts'
import { isInboard, mastWithin } from '../rail-view.ts'
import type { Point } from '../sheet.ts'
import type { ChartLayout } from './layout.ts'

/** A rail as it lies on the chart: its pins, its plank's corners, and how it is to be numbered. */
export interface DeckRail {
  readonly rail: Rail
  readonly pins: readonly { readonly place: Place; readonly at: Point; readonly radius: number }[]
  /** Four corners of the plank, or the ring about a mast. */
  readonly plank:
    | { readonly kind: 'plank'; readonly corners: readonly Point[] }
    | { readonly kind: 'ring'; readonly at: Point; readonly radius: number }
  /** Numbered on deck: to which hand the numbers stand; a rail at the side is numbered in its list. */
  readonly numbered: 'left' | 'right' | 'below' | undefined
  readonly bounds: Rect
}

const plankHalf = 1

/** All rails whose places are known, or that lie round a mast whose place is. */
export function deckRails(rig: Rig, layout: ChartLayout): readonly DeckRail[] {
  if (!layout.hull) return []
  return rig.rails.flatMap(rail =>
    rail.lie === 'round' ? ringed(rail, rig, layout) : planked(rail, rig, layout),
  )
}

function planked(rail: Rail, rig: Rig, { onSheet }: ChartLayout): readonly DeckRail[] {
  const known = rail.places.flatMap(place =>
    place.at ? [{ place, at: onSheet(place.at.x, place.at.y) }] : [],
  )
  const [first] = known
  const last = known.at(-1)
  if (!first || !last) return []
  const gap =
    known.length > 1 ? Math.hypot(last.at.x - first.at.x, last.at.y - first.at.y) / (known.length - 1) : 2
  const radius = Math.max(0.3, Math.min(0.62, gap * 0.36))
  const corners = plankCorners(first.at, last.at, Math.min(1.15, Math.max(0.8, gap * 0.7)))
  const numbered =
    known.length < 2 || !isInboardOf(rail, rig)
      ? undefined
      : rail.lie === 'athwart'
        ? 'below'
        : rail.lie === 'port'
          ? 'left'
          : 'right'
  return [
    {
      rail,
      pins: known.map(pin => ({ ...pin, radius })),
      plank: { kind: 'plank', corners },
      numbered,
      bounds: boundsOf(corners) ?? { left: 0, right: 0, top: 0, bottom: 0 },
    },
  ]
}

const isInboardOf = (rail: Rail, rig: Rig): boolean =>
  rail.lie === 'port' || rail.lie === 'starboard' ? isInboard(rail, rig) : true

/** A plank about a run of pins; about a single one it lies fore and aft. */
function plankCorners(from: Point, to: Point, over: number): readonly Point[] {
  const long = Math.hypot(to.x - from.x, to.y - from.y)
  const [ux, uy] = long > 0 ? [(to.x - from.x) / long, (to.y - from.y) / long] : [0, 1]
  const corner = (end: Point, along: number, across: number): Point => ({
    x: end.x + along * ux - across * uy,
    y: end.y + along * uy + across * ux,
  })
  return [
    corner(from, -over, -plankHalf),
    corner(to, over, -plankHalf),
    corner(to, over, plankHalf),
    corner(from, -over, plankHalf),
  ]
}

/** A band round a mast: its pins in a ring from forward round by starboard, wider than the mast where they need it. */
function ringed(rail: Rail, rig: Rig, { onSheet, scale }: ChartLayout): readonly DeckRail[] {
  const centre = middleOf(rail) ?? mastWithin(rail, rig)?.foot
  if (!centre || scale === undefined) return []
  const at = onSheet(centre.x, centre.y)
  const count = rail.places.length
  const radius = Math.max(250 / scale, 2.4, (count * 1.6) / (2 * Math.PI))
  const pins = rail.places.map((place, index) => {
    const turn = (index / count) * 2 * Math.PI
    return {
      place,
      at: { x: at.x + radius * Math.sin(turn), y: at.y - radius * Math.cos(turn) },
      radius: 0.5,
    }
  })
  const bounds = grown({ left: at.x, right: at.x, top: at.y, bottom: at.y }, radius + 0.8)
  return [{ rail, pins, plank: { kind: 'ring', at, radius }, numbered: undefined, bounds }]
}

/** The middle of a ring's places; undefined where they are not known. */
function middleOf({ places }: Rail): { readonly x: number; readonly y: number } | undefined {
  const known = places.flatMap(({ at }) => at ?? [])
  if (known.length === 0) return undefined
  const mean = (along: 'x' | 'y') => known.reduce((sum, at) => sum + at[along], 0) / known.length
  return { x: mean('x'), y: mean('y') }
}
