import type { Rig, Sail } from '../../rig/index.ts'
import { boundsOf } from '../plane.ts'
import { hullLines, hullShape, type View, viewAt } from '../sail-plan/index.ts'
import type { Mark, PathStep, Point } from '../sheet.ts'
import { black, points, white } from './type.ts'

/** Where an outline of the ship may stand: within this width, on this waterline, no higher than this. */
export interface OutlineRoom {
  readonly width: number
  readonly waterline: number
  readonly height: number
}

/**
 * The ship in outline, bow to the right, with some sails solid: a mark of recognition, not a plan. Square sails
 * are drawn as if braced, six tenths of their width, so that the fore-and-aft sails show between the masts.
 * Undefined where the text gives no geometry to draw.
 */
export function shipOutline(
  rig: Rig,
  solid: ReadonlySet<string>,
  room: OutlineRoom,
): readonly Mark[] | undefined {
  const view = viewFor(rig, room)
  if (!view) return undefined
  const sails = rig.sails.flatMap(sail => {
    const steps = sailOutline(sail, view)
    return steps ? [{ sail, steps, isSolid: solid.has(sail.name) }] : []
  })
  const foreAndAft = sails.filter(({ sail, isSolid }) => sail.kind === 'fore-and-aft' && !isSolid)
  const squares = sails.filter(({ sail, isSolid }) => sail.kind !== 'fore-and-aft' && !isSolid)
  const own = sails.filter(({ isSolid }) => isSolid)
  return [
    ...stayLines(rig, view),
    ...foreAndAft.map(({ steps }) => open(steps, points(0.6))),
    ...sparLines(rig, view),
    ...squares.map(({ steps }) => open(steps, points(0.8))),
    ...own.map(({ steps }) => closed(steps)),
    ...hullOutline(rig, view),
  ]
}

const braced = 0.6

interface Corner {
  readonly x: number
  readonly z: number
}

const isSober = (value: number | undefined): value is number =>
  value !== undefined && Number.isFinite(value) && Math.abs(value) < 1000

const sober = (corners: readonly (Corner | undefined)[]): readonly Corner[] | undefined => {
  const known = corners.filter(corner => corner !== undefined && isSober(corner.x) && isSober(corner.z))
  return known.length === corners.length ? (known as readonly Corner[]) : undefined
}

function viewFor(rig: Rig, { width, waterline, height }: OutlineRoom): View | undefined {
  const lines = hullLines(rig)
  const hull = lines ? [lines.stemHead, lines.taffrail] : []
  const all = [
    ...hull,
    ...rig.sails.flatMap(sail => sailCorners(sail) ?? []),
    ...rig.masts.flatMap(mast => sober([mast.foot, ...mast.sections.map(section => section.head)]) ?? []),
    ...rig.spars.flatMap(spar => (spar.kind === 'yard' ? [] : (sober([spar.inner, spar.outer]) ?? []))),
  ]
  // Seen from starboard, so what is forward is to the right.
  const bounds = boundsOf(all.map(({ x, z }) => ({ x: -x, y: -z })))
  if (!bounds || bounds.right - bounds.left < 1 || bounds.top > -1) return undefined
  const metre = Math.min(width / (bounds.right - bounds.left), height / -bounds.top)
  const spare = width - (bounds.right - bounds.left) * metre
  return viewAt(1000 / metre, { x: spare / 2 - bounds.left * metre, y: waterline })
}

function sailCorners(sail: Sail): readonly Corner[] | undefined {
  if (sail.kind === 'studdingsail')
    return sober(sail.corners.map(({ at }) => ({ x: at.x - at.y * braced, z: at.z })))
  if (sail.kind === 'fore-and-aft')
    return sail.corners.length > 2 ? sober(sail.corners.map(corner => corner.at)) : undefined
  const { x, head, foot } = sail
  if (!isSober(x) || !head || !foot) return undefined
  const half = (edge: { readonly width: number }) => (edge.width / 2) * braced
  return sober([
    { x: x + half(head), z: head.height },
    { x: x - half(head), z: head.height },
    { x: x - half(foot), z: foot.height },
    { x: x + half(foot), z: foot.height },
  ])
}

function sailOutline(sail: Sail, view: View): readonly PathStep[] | undefined {
  const corners = sailCorners(sail)
  if (!corners) return undefined
  const places = corners.map(({ x, z }) => view.at(x, z))
  if (sail.kind === 'square')
    return squareOutline(places, (isSober(sail.roach) ? sail.roach : 0) * view.metre)
  return [...places.map(({ x, y }, index): PathStep => [index === 0 ? 'M' : 'L', x, y]), ['Z']]
}

// Both leeches belly aft, as on a sail that draws.
function squareOutline(places: readonly Point[], roach: number): readonly PathStep[] {
  const [aftHead, foreHead, foreClew, aftClew] = places as readonly [Point, Point, Point, Point]
  const belly = (foreClew.x - aftClew.x) * 0.06
  const leech = (from: Point, to: Point): PathStep => {
    const middle = (from.x + to.x) / 2 - belly
    return ['C', middle, from.y + (to.y - from.y) * 0.35, middle, from.y + (to.y - from.y) * 0.7, to.x, to.y]
  }
  const rise = foreClew.y - Math.max(roach, 0.35) * (4 / 3)
  return [
    ['M', aftHead.x, aftHead.y],
    ['L', foreHead.x, foreHead.y],
    leech(foreHead, foreClew),
    [
      'C',
      foreClew.x - (foreClew.x - aftClew.x) / 3,
      rise,
      aftClew.x + (foreClew.x - aftClew.x) / 3,
      rise,
      aftClew.x,
      aftClew.y,
    ],
    leech(aftClew, aftHead),
    ['Z'],
  ]
}

const open = (steps: readonly PathStep[], width: number): Mark => ({
  kind: 'path',
  steps,
  fill: { ink: white },
  pen: { ink: black, width, join: 'round' },
})

// A white edge keeps one solid sail apart from the next.
const closed = (steps: readonly PathStep[]): Mark => ({
  kind: 'path',
  steps,
  fill: { ink: black },
  pen: { ink: white, width: 0.35, join: 'round' },
})

function stayLines(rig: Rig, view: View): readonly Mark[] {
  return rig.standing.flatMap(stay =>
    stay.kind === 'stay' ? line(sober([stay.from, stay.to]), view, points(0.4)) : [],
  )
}

function sparLines(rig: Rig, view: View): readonly Mark[] {
  const masts = rig.masts.flatMap(mast => {
    const top = mast.sections.at(-1)?.head
    const lower = mast.sections[0]?.head
    return [...line(sober([mast.foot, top]), view, 0.55), ...line(sober([mast.foot, lower]), view, 0.95)]
  })
  const others = rig.spars.flatMap(spar =>
    spar.kind === 'yard'
      ? []
      : line(sober([spar.inner, spar.outer]), view, spar.kind === 'bowsprit' ? 0.95 : 0.6),
  )
  return [...masts, ...others]
}

function line(corners: readonly Corner[] | undefined, { at }: View, width: number): readonly Mark[] {
  if (!corners) return []
  return [{ kind: 'line', points: corners.map(({ x, z }) => at(x, z)), pen: { ink: black, width } }]
}

function hullOutline(rig: Rig, view: View): readonly Mark[] {
  const lines = hullLines(rig)
  if (!lines) return []
  return [
    {
      kind: 'path',
      steps: hullShape(lines, view).topsides,
      fill: { ink: white },
      pen: { ink: black, width: points(1), join: 'round' },
    },
  ]
}
