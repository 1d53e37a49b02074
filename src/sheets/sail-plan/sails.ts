import type { Reef } from '../../rig/index.ts'
import { partsOf, type Shape, shapeOf } from '../clip.ts'
import { dash, ink, weight } from '../ink.ts'
import { between, type Curve, distance, onCurve } from '../plane.ts'
import type { Mark, Pen, Point } from '../sheet.ts'
import type { SailShape } from './sail-shape.ts'
import { addressOf, disc, run } from './strokes.ts'
import type { View } from './view.ts'

/** Ground of a square sail: mast, doubling, top and crosstrees ghost through it. */
export const squareGround = { ink: ink.squareSail, opacity: 0.66 } as const
/** Ground of a fore-and-aft sail. */
export const foreAndAftGround = { ink: ink.foreAndAftSail, opacity: 0.9 } as const

/**
 * A sail: one group with its address, in it one closed outline, then seams, tabling, reef bands and the rings
 * at its corners, all of them open runs or discs.
 */
export function sailMarks(drawn: SailShape, view: View): Mark {
  const { sail, steps, corners } = drawn
  const isSquare = sail.kind === 'square'
  const isHeavy = isSquare || corners.length > 3 || sail.class === 'gaff topsail'
  const rope: Pen = {
    ink: ink.ink,
    width: isHeavy ? weight.d : weight.c,
    join: 'round',
    ...(sail.conjectural ? { dash: dash.conjectural } : {}),
  }
  return {
    kind: 'group',
    id: addressOf('sail', sail.name),
    title: sail.label,
    marks: [
      {
        kind: 'path',
        id: addressOf('outline', sail.name),
        steps,
        fill: isSquare ? squareGround : foreAndAftGround,
        pen: rope,
      },
      ...seams(drawn, view),
      ...tabling(drawn),
      ...sail.reefs.slice(0, 6).flatMap(reef => reefBand(reef, drawn, view)),
      ...corners.map(corner => disc(corner, 0.38, { ink: ink.paper }, { ink: ink.ink, width: weight.b })),
    ],
  }
}

const edgePieces = 16

/** An edge as a run of points. */
export const pointsOf = (curve: Curve): readonly Point[] =>
  Array.from({ length: edgePieces + 1 }, (_, i) => onCurve(curve, i / edgePieces))

/** Cloths of 24 inches; a little narrower where the scale is large. */
const clothWidth = (scale: number): number => (scale <= 125 ? 0.5 : 0.61)

function seams(drawn: SailShape, view: View): readonly Mark[] {
  const { sail, shape } = drawn
  const inner = insetShape(drawn, ropeInside)
  const direction = clothDirection(drawn)
  const step = clothWidth(view.scale) * view.metre
  const { left, right, top, bottom } = shape.bounds
  const reach = Math.hypot(right - left, bottom - top)
  // Under 1.2 mm on paper seams would close up to a tone: then every second, fourth, eighth is drawn.
  const spacing = step * 2 ** Math.max(0, Math.ceil(Math.log2(1.2 / step)))
  const count = Math.min(300, Math.ceil(reach / spacing))
  const pen: Pen = { ink: sail.kind === 'square' ? ink.squareCloth : ink.foreAndAftCloth, width: weight.a }
  const across = { x: -direction.y, y: direction.x }
  const start = seamStart(drawn)
  return Array.from({ length: 2 * count + 1 }, (_, i) => i - count).flatMap(i => {
    const off = (i + 0.5) * spacing
    const foot = { x: start.x + across.x * off, y: start.y + across.y * off }
    const whole = [-reach, reach].map(far => ({
      x: foot.x + direction.x * far,
      y: foot.y + direction.y * far,
    }))
    return partsOf(whole, [inner]).inside.map(part => run(part, pen))
  })
}

/** Cloths run down a square sail's middle line, and along a fore-and-aft sail's leech. */
function clothDirection({ sail, edges }: SailShape): Point {
  const [head, leech, foot] = [
    edges.find(edge => edge.name === 'head'),
    edges.find(edge => edge.name === 'leech'),
    edges.find(edge => edge.name === 'foot'),
  ]
  if (sail.kind === 'square' && head && foot) return unit(middleOf(head.curve), middleOf(foot.curve))
  return leech ? unit(leech.curve[0], leech.curve[3]) : { x: 0, y: 1 }
}

function seamStart({ sail, edges, centroid }: SailShape): Point {
  const edge = edges.find(({ name }) => name === (sail.kind === 'square' ? 'head' : 'leech'))
  if (!edge) return centroid
  return sail.kind === 'square' ? middleOf(edge.curve) : edge.curve[0]
}

const middleOf = (curve: Curve): Point => between(curve[0], curve[3], 0.5)

function unit(a: Point, b: Point): Point {
  const length = distance(a, b)
  return length === 0 ? { x: 0, y: 1 } : { x: (b.x - a.x) / length, y: (b.y - a.y) / length }
}

const tablingInside = 0.55
/** Seams and reef bands stop at the bolt rope's inner edge. */
const ropeInside = 0.18

/** The tabling: a thin line inside each edge. */
function tabling(drawn: SailShape): readonly Mark[] {
  const pen: Pen = { ink: ink.faint, width: weight.a }
  return insetEdges(drawn, tablingInside).flatMap(points =>
    partsOf(points, [drawn.shape]).inside.map(part => run(part, pen)),
  )
}

/** The sail's outline moved inward. */
const insetShape = (drawn: SailShape, by: number): Shape => shapeOf(insetEdges(drawn, by).flat())

/** Each edge of the sail, moved inward square to itself. */
function insetEdges({ edges, shape }: SailShape, by: number): readonly (readonly Point[])[] {
  const middle = middleOfBounds(shape)
  return edges.map(({ curve }) => {
    const points = pointsOf(curve)
    return points.map((point, i) => {
      const along = unit(points[Math.max(0, i - 1)] ?? point, points[Math.min(edgePieces, i + 1)] ?? point)
      const inward = Math.sign(along.x * (middle.y - point.y) - along.y * (middle.x - point.x)) || 1
      return { x: point.x - along.y * by * inward, y: point.y + along.x * by * inward }
    })
  })
}

const middleOfBounds = ({ bounds: { left, right, top, bottom } }: Shape): Point => ({
  x: (left + right) / 2,
  y: (top + bottom) / 2,
})

/** Where a reef band lies across a sail, from edge to edge. */
export function reefLine(
  { depth, from }: Reef,
  { sail, edges, shape }: SailShape,
  { metre }: View,
): readonly Point[] {
  const edge = edges.find(({ name }) => name === from)
  if (!edge || !Number.isFinite(depth) || depth <= 0) return []
  const [a, , , b] = edge.curve
  const along = unit(a, b)
  const middle = middleOfBounds(shape)
  const inward = Math.sign(along.x * (middle.y - a.y) - along.y * (middle.x - a.x)) || 1
  const off = depth * metre
  const down =
    sail.kind === 'square' ? { x: 0, y: off } : { x: -along.y * off * inward, y: along.x * off * inward }
  const reach = distance(a, b) * 2
  const through = [-reach, distance(a, b) + reach].map(far => ({
    x: a.x + along.x * far + down.x,
    y: a.y + along.y * far + down.y,
  }))
  return partsOf(through, [shape]).inside[0] ?? []
}

const bandBreadth = 0.9
/** How far reef points hang out of the band's upper line. */
export const reefReach = { above: 1.1, below: 2 } as const

/** A reef band: two thin lines, and a point at every cloth. */
function reefBand(reef: Reef, drawn: SailShape, view: View): readonly Mark[] {
  const line = reefLine(reef, drawn, view)
  const [a, b] = [line[0], line[line.length - 1]]
  if (!a || !b) return []
  const along = unit(a, b)
  const [left, right] = a.x < b.x ? [a, b] : [b, a]
  const slope = (right.y - left.y) / Math.max(1e-6, right.x - left.x)
  const drop = { x: 0, y: bandBreadth }
  const lines = [0, 1].map(n => [
    { x: a.x + drop.x * n, y: a.y + drop.y * n },
    { x: b.x + drop.x * n, y: b.y + drop.y * n },
  ])
  const length = distance(a, b)
  const step = pointStep(view)
  const count = Math.min(200, Math.floor(length / step))
  const inset = (length - (count - 1) * step) / 2
  const points = Array.from({ length: Math.max(0, count) }, (_, i) => {
    const far = inset + i * step
    const at = { x: left.x + Math.abs(along.x) * far, y: left.y + slope * Math.abs(along.x) * far }
    return [
      { x: at.x, y: at.y - reefReach.above },
      { x: at.x, y: at.y + reefReach.below },
    ]
  })
  const inner = insetShape(drawn, ropeInside)
  return [
    ...lines.flatMap(ends => partsOf(ends, [inner]).inside.map(part => run(part, bandPen))),
    ...points.map(ends => run(ends, pointPen)),
  ]
}

const pointStep = ({ scale, metre }: View): number => {
  const step = clothWidth(scale) * metre
  return step * 2 ** Math.max(0, Math.ceil(Math.log2(2.4 / step)))
}

const bandPen: Pen = { ink: ink.rig, width: weight.a }
const pointPen: Pen = { ink: ink.ink, width: weight.b }
