import { isInside, type Shape, shapeOf } from './clip.ts'
import { type LabelBox, labelBoxesMeet } from './label-box.ts'
import {
  boundsOf,
  cornersOf,
  grown,
  type Rect,
  rect,
  rectsMeet,
  type Stretch,
  stretches,
  stretchMeetsRect,
  turned,
} from './plane.ts'
import type { Point } from './sheet.ts'

/** One way of setting a label: its room, how it is turned, and what it costs to set it so. */
export interface LabelForm {
  readonly width: number
  readonly height: number
  /** Radians, clockwise on paper. */
  readonly angle: number
  readonly cost: number
  /** A line of the same angle that the label must lie along, this far from it, on the side of the home point. */
  readonly along?: { readonly line: Stretch; readonly gap: number }
}

/** A drawn line that a label should not cross, and what crossing it costs. */
export interface Obstacle {
  readonly points: readonly Point[]
  readonly cost: number
  /** A label that crosses it has found no place. */
  readonly isHard: boolean
}

/** A room that is taken: another label, a mark. */
export interface TakenBox {
  readonly box: LabelBox
  readonly cost: number
}

/** All that decides where a label goes. */
export interface LabelGround {
  /** What it names: its corners should lie inside. */
  readonly within: Shape
  /** What lies over that: its corners should not lie under these. */
  readonly nearer: readonly Shape[]
  readonly obstacles: readonly Obstacle[]
  readonly taken: readonly TakenBox[]
  /** The point it would stand at, were nothing in the way. */
  readonly home: Point
}

/** A label at its place. */
export interface PlacedLabel<Form extends LabelForm> {
  readonly form: Form
  readonly box: LabelBox
  readonly cost: number
  /** True where it crosses nothing hard, lies inside and under nothing. */
  readonly isClear: boolean
}

/** What the corners of a label cost, and its distance from home for each millimetre along and across its lines. */
const price = { outside: 60, underNearer: 45, along: 0.22, across: 0.3 } as const
const mostPlaces = 2500

/** The cheapest place of the cheapest form; undefined only where there is no form. */
export function placeLabel<Form extends LabelForm>(
  forms: readonly Form[],
  ground: LabelGround,
): PlacedLabel<Form> | undefined {
  let best: PlacedLabel<Form> | undefined
  const views = new Map<number, TurnedGround>()
  const ordered = forms.map((form, i) => ({ form, i })).sort((a, b) => a.form.cost - b.form.cost || a.i - b.i)
  for (const { form } of ordered) {
    const view = views.get(form.angle) ?? turnedGround(ground, form.angle)
    views.set(form.angle, view)
    for (const place of placesOf(form, view)) {
      const least = form.cost + place.cost
      // Places come cheapest first, so nothing after this one can win.
      if (best && least >= best.cost) break
      const judged = judge(form, place, view, best?.cost ?? Infinity)
      if (!best || judged.cost < best.cost)
        best = { form, box: judged.box, cost: judged.cost, isClear: judged.isClear }
    }
  }
  return best
}

/** The ground turned so that a label of this angle lies level. */
interface TurnedGround {
  readonly angle: number
  readonly within: Shape
  readonly nearer: readonly Shape[]
  readonly obstacles: readonly {
    readonly stretches: readonly Stretch[]
    readonly reach: Rect
    readonly of: Obstacle
  }[]
  readonly taken: readonly TakenBox[]
  readonly home: Point
  readonly grid: readonly Place[]
}

interface Place {
  readonly at: Point
  readonly cost: number
}

function turnedGround(ground: LabelGround, angle: number): TurnedGround {
  const level = (point: Point) => turned(point, -angle)
  const within = shapeOf(ground.within.points.map(level))
  const home = level(ground.home)
  const near = ground.obstacles.filter(({ points }) => rectsMeet(reachOf(points), ground.within.bounds))
  const obstacles = near.map(of => {
    const points = of.points.map(level)
    return { stretches: stretches(points), reach: reachOf(points), of }
  })
  return {
    angle,
    within,
    nearer: ground.nearer
      .filter(({ bounds }) => rectsMeet(bounds, ground.within.bounds))
      .map(shape => shapeOf(shape.points.map(level))),
    obstacles: obstacles.filter(({ reach }) => rectsMeet(reach, within.bounds)),
    taken: ground.taken,
    home,
    grid: gridAbout(home, within.bounds),
  }
}

/** The obstacle's extent, a hair wider, so that a level or an upright line has one too. */
function reachOf(points: readonly Point[]): Rect {
  const bounds = boundsOf(points) ?? rect(0, 0, 0, 0)
  return grown(bounds, 1e-9)
}

/** Places on a grid of 1 mm (wider in a very large sail) about home, the nearest first. */
function gridAbout(home: Point, bounds: Rect): readonly Place[] {
  const area = (bounds.right - bounds.left) * (bounds.bottom - bounds.top)
  const step = Math.max(1, Math.sqrt(area / mostPlaces))
  const span = (from: number, to: number, at: number) => {
    const first = Math.ceil((from - at) / step)
    return Array.from({ length: Math.max(0, Math.floor((to - at) / step) - first + 1) }, (_, i) => first + i)
  }
  const columns = span(bounds.left, bounds.right, home.x)
  const rows = span(bounds.top, bounds.bottom, home.y)
  return rows
    .flatMap(row =>
      columns.map(column => ({
        at: { x: home.x + column * step, y: home.y + row * step },
        cost: price.along * Math.abs(column * step) + price.across * Math.abs(row * step),
      })),
    )
    .sort((a, b) => a.cost - b.cost || a.at.y - b.at.y || a.at.x - b.at.x)
}

const alongStep = 0.8

function placesOf(
  { along, height, width }: LabelForm,
  { grid, home, angle }: TurnedGround,
): readonly Place[] {
  if (!along) return grid
  const [a, b] = [turned(along.line[0], -angle), turned(along.line[1], -angle)]
  const y = a.y + Math.sign(home.y - a.y) * (along.gap + height / 2)
  const [from, to] = [Math.min(a.x, b.x) + width / 2, Math.max(a.x, b.x) - width / 2]
  const middle = (from + to) / 2
  const count = Math.max(0, Math.min(400, Math.floor((to - from) / alongStep)))
  // Along an edge the middle of the edge is home.
  return Array.from({ length: count + 1 }, (_, i) => from + i * alongStep)
    .map(x => ({ at: { x, y }, cost: price.along * Math.abs(x - middle) }))
    .sort((p, q) => p.cost - q.cost || p.at.x - q.at.x)
}

interface Judged {
  readonly box: LabelBox
  readonly cost: number
  readonly isClear: boolean
}

/** What the place costs; it stops counting once the sum passes `most`. */
function judge(form: LabelForm, { at, cost: far }: Place, view: TurnedGround, most: number): Judged {
  const { width, height, angle } = form
  const box: LabelBox = { middle: turned(at, angle), width, height, angle }
  const room = rect(at.x - width / 2, at.y - height / 2, at.x + width / 2, at.y + height / 2)
  let cost = form.cost + far
  let isClear = true
  const add = (more: number, isHard: boolean) => {
    cost += more
    if (isHard) isClear = false
  }
  for (const corner of cornersOf(room)) {
    if (cost >= most) break
    if (!isInside(corner, view.within)) add(price.outside, true)
    if (view.nearer.some(shape => isInside(corner, shape))) add(price.underNearer, true)
  }
  for (const taken of view.taken) if (cost < most && labelBoxesMeet(taken.box, box)) add(taken.cost, true)
  for (const { stretches: parts, reach, of } of view.obstacles) {
    if (cost >= most) break
    if (rectsMeet(reach, room) && parts.some(part => stretchMeetsRect(part, room))) add(of.cost, of.isHard)
  }
  return { box, cost, isClear }
}
