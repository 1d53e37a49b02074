import { isInside, partsOf, type Shape } from '../clip.ts'
import { type LabelBox, labelBoxesMeet, uprightBox } from '../label-box.ts'
import {
  distance,
  grown,
  type Rect,
  rect,
  rectsMeet,
  type Stretch,
  stretches,
  stretchMeetsRect,
} from '../plane.ts'
import type { Point } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import { type NameForm, skyForms } from './name-forms.ts'
import type { PlacedName } from './placed-name.ts'
import type { SailShape } from './sail-shape.ts'

/** The clear paper about the ship. */
export interface Sky {
  readonly room: Rect
  /** Sails, hull, masts and spars: what stands in the sky. */
  readonly solids: readonly Shape[]
  /** Lines in the sky: stays. */
  readonly lines: readonly (readonly Point[])[]
  /** Cartouche, key, table, letters. */
  readonly taken: readonly Rect[]
}

/** The sky with the names that already stand on the plan. */
export interface Beside extends Sky {
  readonly names: readonly PlacedName[]
}

const step = 3
const clear = 1.6

/** The nearest place in clear sky for the name, and a leader to the part of the sail that is seen. */
export function placeInSky(
  { sail }: SailShape,
  area: string,
  { anchor, sky }: { readonly anchor: Point; readonly sky: Beside },
  ruler: Ruler,
): Omit<PlacedName, 'drawn'> | undefined {
  const leaders = sky.names.flatMap(({ leader }) => (leader ? [leader] : []))
  const lines = [...sky.lines, ...leaders].flatMap(points => stretches(points))
  const boxes = [...sky.taken.map(uprightBox), ...sky.names.map(({ box }) => box)]
  const places = skyForms(sail, area, ruler).flatMap(form =>
    gridOf(sky.room, form).map(middle => ({ form, middle, cost: form.cost + distance(middle, anchor) })),
  )
  // The nearest come first, so the first that is clear is the best.
  places.sort((a, b) => a.cost - b.cost || a.middle.y - b.middle.y || a.middle.x - b.middle.x)
  for (const { form, middle, cost } of places) {
    const box: LabelBox = { middle, width: form.width, height: form.height, angle: 0 }
    const room = roomOf(box)
    const leader = leaderTo(room, anchor)
    if (!isClear(grown(room, clear), boxes, lines, sky.solids)) continue
    if (!crossesLabels(leader, sky.names, leaders)) return { form, box, leader, cost, isClear: true }
  }
  return undefined
}

const roomOf = ({ middle: { x, y }, width, height }: LabelBox): Rect =>
  rect(x - width / 2, y - height / 2, x + width / 2, y + height / 2)

function gridOf({ left, top, right, bottom }: Rect, { width, height }: NameForm): readonly Point[] {
  const columns = Math.max(0, Math.min(400, Math.floor((right - left - width) / step)))
  const rows = Math.max(0, Math.min(400, Math.floor((bottom - top - height) / step)))
  return Array.from({ length: (columns + 1) * (rows + 1) }, (_, i) => ({
    x: left + width / 2 + (i % (columns + 1)) * step,
    y: top + height / 2 + Math.floor(i / (columns + 1)) * step,
  }))
}

function isClear(
  room: Rect,
  boxes: readonly LabelBox[],
  lines: readonly Stretch[],
  solids: readonly Shape[],
): boolean {
  const box = uprightBox(room)
  return !(
    boxes.some(other => labelBoxesMeet(other, box)) ||
    lines.some(line => stretchMeetsRect(line, room)) ||
    solids.some(
      solid =>
        rectsMeet(solid.bounds, room) &&
        (isInside(box.middle, solid) || solid.edges.some(edge => stretchMeetsRect(edge, room))),
    )
  )
}

/** The point nearest the centroid that is inside the sail and under nothing; undefined for a sail wholly hidden. */
export function seenPoint({ shape, centroid }: SailShape, nearer: readonly Shape[]): Point | undefined {
  const { left, top, right, bottom } = shape.bounds
  const isSeen = (point: Point) => isInside(point, shape) && !nearer.some(other => isInside(point, other))
  if (isSeen(centroid)) return centroid
  const pieces = 24
  const points = Array.from({ length: (pieces - 1) ** 2 }, (_, i) => ({
    x: left + ((right - left) * ((i % (pieces - 1)) + 1)) / pieces,
    y: top + ((bottom - top) * (Math.floor(i / (pieces - 1)) + 1)) / pieces,
  }))
  return points
    .filter(isSeen)
    .reduce<Point | undefined>(
      (near, point) => (!near || distance(point, centroid) < distance(near, centroid) ? point : near),
      undefined,
    )
}

/** From the middle of the label's nearer side to the anchor. */
function leaderTo({ left, top, right, bottom }: Rect, anchor: Point): readonly Point[] {
  const y = (top + bottom) / 2
  const sides = [
    { x: left - 0.6, y },
    { x: right + 0.6, y },
  ]
  const below = { x: (left + right) / 2, y: anchor.y > y ? bottom + 0.4 : top - 0.4 }
  const start = [...sides, below].reduce((near, side) =>
    distance(side, anchor) < distance(near, anchor) ? side : near,
  )
  return [start, anchor]
}

function crossesLabels(
  leader: readonly Point[],
  names: readonly PlacedName[],
  leaders: readonly (readonly Point[])[],
): boolean {
  const [a, b] = [leader[0], leader[1]]
  if (!a || !b) return false
  const thin = thinBox(a, b)
  return (
    names.some(({ box }) => labelBoxesMeet(box, thin)) ||
    leaders.some(other => other[0] && other[1] && labelBoxesMeet(thinBox(other[0], other[1]), thin))
  )
}

const thinBox = (a: Point, b: Point): LabelBox => ({
  middle: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 },
  width: distance(a, b),
  height: 0.4,
  angle: Math.atan2(b.y - a.y, b.x - a.x),
})

/** Parts of runs that no shape hides: what of the stays is seen. */
export const seenRuns = (
  runs: readonly (readonly Point[])[],
  shapes: readonly Shape[],
): readonly (readonly Point[])[] => runs.flatMap(points => partsOf(points, shapes).outside)
