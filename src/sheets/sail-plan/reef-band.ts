import type { Reef } from '../../rig/index.ts'
import { partsOf } from '../clip.ts'
import { ink, weight } from '../ink.ts'
import { distance } from '../plane.ts'
import type { Mark, Pen, Point } from '../sheet.ts'
import { clothWidth } from './cloths.ts'
import { insetShape, middleOfBounds, ropeInside, unit } from './sail-edges.ts'
import type { SailShape } from './sail-shape.ts'
import { run } from './strokes.ts'
import type { View } from './view.ts'

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
    sail.kind !== 'fore-and-aft'
      ? { x: 0, y: off }
      : { x: -along.y * off * inward, y: along.x * off * inward }
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
export function reefBand(reef: Reef, drawn: SailShape, view: View): readonly Mark[] {
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
