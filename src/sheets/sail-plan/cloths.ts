import { partsOf } from '../clip.ts'
import { ink, weight } from '../ink.ts'
import type { Mark, Pen, Point } from '../sheet.ts'
import { insetEdges, insetShape, middleOf, ropeInside, unit } from './sail-edges.ts'
import type { SailShape } from './sail-shape.ts'
import { run } from './strokes.ts'
import type { View } from './view.ts'

/** Cloths of 24 inches; a little narrower where the scale is large. */
export const clothWidth = (scale: number): number => (scale <= 125 ? 0.5 : 0.61)

/** The seams of a sail, from bolt rope to bolt rope. */
export function seams(drawn: SailShape, view: View): readonly Mark[] {
  const { sail, shape } = drawn
  const inner = insetShape(drawn, ropeInside)
  const direction = clothDirection(drawn)
  const step = clothWidth(view.scale) * view.metre
  const { left, right, top, bottom } = shape.bounds
  const reach = Math.hypot(right - left, bottom - top)
  // Under 1.2 mm on paper seams would close up to a tone: then every second, fourth, eighth is drawn.
  const spacing = step * 2 ** Math.max(0, Math.ceil(Math.log2(1.2 / step)))
  const count = Math.min(300, Math.ceil(reach / spacing))
  const pen: Pen = {
    ink: sail.kind !== 'fore-and-aft' ? ink.squareCloth : ink.foreAndAftCloth,
    width: weight.a,
  }
  const across = { x: -direction.y, y: direction.x }
  const start = seamStart(drawn)
  return Array.from({ length: 2 * count + 1 }, (_, i) => i - count).flatMap(i => {
    const off = (i + 0.5) * spacing
    const foot = { x: start.x + across.x * off, y: start.y + across.y * off }
    const whole = [-reach, reach].map(far => ({
      x: foot.x + direction.x * far,
      y: foot.y + direction.y * far,
    }))
    const detail = i % 2 === 0 ? 'seam' : 'second seam'
    return partsOf(whole, [inner]).inside.map(points => ({ kind: 'line', detail, points, pen }) as const)
  })
}

/** Cloths run down a square sail's middle line, and along a fore-and-aft sail's leech. */
function clothDirection({ sail, edges }: SailShape): Point {
  const [head, leech, foot] = [
    edges.find(edge => edge.name === 'head'),
    edges.find(edge => edge.name === 'leech'),
    edges.find(edge => edge.name === 'foot'),
  ]
  if (sail.kind !== 'fore-and-aft' && head && foot) return unit(middleOf(head.curve), middleOf(foot.curve))
  return leech ? unit(leech.curve[0], leech.curve[3]) : { x: 0, y: 1 }
}

function seamStart({ sail, edges, centroid }: SailShape): Point {
  const edge = edges.find(({ name }) => name === (sail.kind !== 'fore-and-aft' ? 'head' : 'leech'))
  if (!edge) return centroid
  return sail.kind !== 'fore-and-aft' ? middleOf(edge.curve) : edge.curve[0]
}

const tablingInside = 0.55

/** The tabling: a thin line inside each edge. */
export function tabling(drawn: SailShape): readonly Mark[] {
  const pen: Pen = { ink: ink.faint, width: weight.a }
  return insetEdges(drawn, tablingInside).flatMap(points =>
    partsOf(points, [drawn.shape]).inside.map(part => run(part, pen)),
  )
}
