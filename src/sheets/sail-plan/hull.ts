import { partsOf, shapeOf } from '../clip.ts'
import { dash, ink, weight } from '../ink.ts'
import { flattened } from '../plane.ts'
import type { Mark, PathStep, Pen, Point } from '../sheet.ts'
import { headMarks } from './hull-head.ts'
import { type HullLines, sheerAt } from './hull-lines.ts'
import { forecastleEdge, type HullShape } from './hull-shape.ts'
import { curveStep, disc, lineTo, moveTo, run, thing } from './strokes.ts'
import type { View } from './view.ts'

/** The hull: underbody, topsides and their paint, head and rudder. A hull by rule is an open dashed outline. */
export function hullMarks(lines: HullLines, shape: HullShape, view: View): Mark {
  const marks = lines.isRecorded
    ? [
        rudder(lines, shape, view),
        ...underbody(lines, shape, view),
        ...headMarks(lines, view),
        ...topsides(lines, shape, view),
      ]
    : ruledHull(shape)
  return thing('hull', lines.isRecorded ? 'Hull' : 'Hull, drawn by rule', marks)
}

function ruledHull({ topsides, underbody }: HullShape): readonly Mark[] {
  const pen: Pen = { ink: ink.hull, width: weight.c, dash: dash.byRule }
  return [
    { kind: 'path', steps: underbody, fill: { ink: ink.belowWater, opacity: 0.45 }, pen },
    { kind: 'path', steps: topsides, fill: { ink: ink.paper }, pen },
  ]
}

function underbody(lines: HullLines, shape: HullShape, view: View): readonly Mark[] {
  const outline = shapeOf(shape.under)
  const levels = Math.min(40, Math.floor((lines.draught - 0.1) / 0.5))
  const depths = Array.from({ length: levels }, (_, i) => -0.5 * (i + 1))
  const width = view.at(lines.length * 1.1, 0)
  const contour = (depth: number): readonly Mark[] => {
    const y = view.at(0, depth).y
    const across = [
      { x: width.x, y },
      { x: view.at(-1, 0).x, y },
    ]
    return partsOf(across, [outline]).inside.map(part => run(insetEnds(part, 1.2), contourPen))
  }
  const keel = 0.26
  return [
    { kind: 'path', steps: shape.underbody, fill: { ink: ink.belowWater } },
    ...depths.flatMap(contour),
    run(
      [
        view.at(lines.sternpost - 0.1, keel - lines.draught),
        view.at(lines.forefoot * 1.25, keel - lines.draught + lines.keelDrag),
      ],
      { ink: ink.rig, width: weight.a },
    ),
    { kind: 'path', steps: opened(shape.underbody), pen: hullPen },
  ]
}

const hullPen: Pen = { ink: ink.ink, width: weight.e, join: 'round', cap: 'round' }

/** The path without its last stretch, which runs along the waterline: paint meets there, no edge. */
const opened = (steps: readonly PathStep[]): readonly PathStep[] => steps.filter(([kind]) => kind !== 'Z')

const contourPen: Pen = { ink: ink.faint, width: weight.a, dash: [2.4, 1.2] }

/** A run of two points with its ends drawn in. */
function insetEnds(points: readonly Point[], by: number): readonly Point[] {
  const [a, b] = [points[0], points[points.length - 1]]
  if (!a || !b || Math.abs(b.x - a.x) < 4 * by) return points
  const step = Math.sign(b.x - a.x) * by
  return [
    { x: a.x + step, y: a.y },
    { x: b.x - step, y: b.y },
  ]
}

const bootTopHeight = 0.28

function topsides(lines: HullLines, shape: HullShape, view: View): readonly Mark[] {
  const outline = shapeOf(flattened(shape.topsides))
  const inside = (points: readonly Point[], pen: Pen): readonly Mark[] =>
    partsOf(points, [outline]).inside.map(part => run(part, pen))
  const level = (z: number) => [view.at(lines.taffrail.x + 1, z), view.at(lines.stemHead.x - 1, z)]
  const paper = (width: number, opacity = 1): Pen => ({ ink: ink.paper, width, opacity })
  const bootTop = bootTopHeight * view.metre
  return [
    { kind: 'path', steps: shape.topsides, fill: { ink: ink.hull } },
    ...inside(level(bootTopHeight / 2), { ink: ink.bootTop, width: bootTop }),
    ...inside(level(bootTopHeight), paper(weight.b)),
    ...moulding(lines, view, 0).flatMap(points => inside(points, paper(weight.d))),
    ...moulding(lines, view, -0.36 * lines.bulwark).flatMap(points => inside(points, paper(weight.a, 0.45))),
    ...moulding(lines, view, -0.7 * lines.bulwark).flatMap(points => inside(points, paper(weight.a, 0.45))),
    ...forecastleMarks(lines, view),
    hawse(lines, view),
    { kind: 'path', steps: opened(shape.topsides), pen: hullPen },
  ]
}

/** A line along the sheer, so much above it, that stops short of stem and transom. */
function moulding(lines: HullLines, { at }: View, above: number): readonly (readonly Point[])[] {
  const from = 0.3 * lines.stemHead.x + 0.01 * lines.length
  const to = lines.knuckle.x
  const pieces = 40
  const z = (x: number) => sheerAt(lines, x) + above
  return [
    Array.from({ length: pieces + 1 }, (_, i) => from + ((to - from) * i) / pieces).map(x => at(x, z(x))),
  ]
}

function forecastleMarks(lines: HullLines, { at }: View): readonly Mark[] {
  const { forecastle } = lines
  if (!forecastle) return []
  const { to, deck } = forecastle
  const edge = forecastleEdge(lines, deck, to)
  const pen: Pen = { ink: ink.paper, width: weight.a, opacity: 0.6 }
  return [
    run([at(to, sheerAt(lines, to) + 0.1), at(to, deck + 0.2)], pen),
    run(
      edge.map(({ x, z }) => at(x, z - 0.55)),
      pen,
    ),
  ]
}

function hawse(lines: HullLines, { at, metre }: View): Mark {
  const x = 0.02 * lines.length
  const z = sheerAt(lines, x) - 0.45 * lines.bulwark
  return disc(
    at(x, z),
    Math.max(0.35, 0.004 * lines.length * metre),
    { ink: ink.paper },
    { ink: ink.ink, width: weight.a },
  )
}

function rudder({ draught, length }: HullLines, { post }: HullShape, { at }: View): Mark {
  const breadth = Math.min(0.022 * length, 0.35 * draught) + 0.12
  const top = at(post.head.x + 0.15 * breadth, 0.1)
  const bottom = -0.93 * draught
  const steps = [
    moveTo(at(post.head.x, 0.1)),
    lineTo(top),
    curveStep([
      top,
      at(post.head.x + 0.7 * breadth, -0.22 * draught),
      at(post.head.x + breadth, -0.45 * draught),
      at(post.head.x + 0.98 * breadth, -0.68 * draught),
    ]),
    curveStep([
      top,
      at(post.head.x + 0.95 * breadth, -0.8 * draught),
      at(post.head.x + 0.86 * breadth, -0.88 * draught),
      at(post.head.x + 0.8 * breadth, bottom),
    ]),
    lineTo(at(post.heel.x, bottom)),
    ['Z'],
  ] as const
  return {
    kind: 'path',
    steps,
    fill: { ink: ink.belowWater },
    pen: { ink: ink.ink, width: weight.c, join: 'round' },
  }
}
