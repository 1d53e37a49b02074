import { type Point3, point3 } from '../../measure/index.ts'
import type { Boom, Spar, StuddingsailBoom, Yard } from '../../rig/index.ts'
import type { Point } from '../sheet.ts'
import { soberThickness } from './mast-shape.ts'
import { isSober, isSoberPoint } from './sober.ts'
import type { View } from './view.ts'

/** A spar's outline on paper, closed. */
export interface SparShape {
  readonly outline: readonly Point[]
  /** Its middle line, from one end to the other. */
  readonly axis: readonly [Point, Point]
  /** Thickness on paper at its thickest. */
  readonly thickness: number
}

/** Thickness along half a yard, from the slings to the tip, as shares of the thickness at the slings. */
const yardTaper: readonly (readonly [number, number])[] = [
  [0, 1],
  [0.5, 0.86],
  [0.94, 0.5],
  [1, 0.42],
]

/** Thickness from the inner to the outer end, as shares of the thickest. */
const boomTaper: Readonly<Record<Boom['kind'], readonly (readonly [number, number])[]>> = {
  boom: [
    [0, 0.8],
    [0.45, 1],
    [1, 0.66],
  ],
  gaff: [
    [0, 0.92],
    [0.35, 1],
    [1, 0.6],
  ],
  bowsprit: [
    [0, 1],
    [0.35, 1],
    [0.7, 0.78],
    [1, 0.5],
  ],
  'slung yard': [
    [0, 0.55],
    [0.4, 1],
    [1, 0.42],
  ],
  spar: [
    [0, 0.8],
    [0.5, 1],
    [1, 0.7],
  ],
}

/** A spar's outline, or undefined where its geometry is not known. */
export function sparShape(spar: Spar, view: View): SparShape | undefined {
  switch (spar.kind) {
    case 'yard':
      return yardShape(spar, view)
    case 'studdingsail boom':
      return boomShape(flat(spar), view)
    default:
      return boomShape(spar, view)
  }
}

/** A boom that lies athwart, turned flat into the paper's plane with its yard: out on the forward arm. */
function flat({ inner, outer, diameter }: StuddingsailBoom): BoomEnds {
  const turned = (end: Point3 | undefined) => end && point3(end.x - end.y, 0, end.z)
  return { kind: 'boom', inner: turned(inner), outer: turned(outer), diameter }
}

type BoomEnds = Pick<Boom, 'kind' | 'inner' | 'outer' | 'diameter'>

/** A yard turned flat into the paper's plane. Undefined where its place or its length is not known. */
function yardShape({ middle, length, diameter }: Yard, view: View): SparShape | undefined {
  if (!middle || length === undefined || !isSoberPoint(middle) || !isSober(length) || length <= 0)
    return undefined
  const half = (length / 2) * view.metre
  const centre = view.at(middle.x, middle.z)
  const thickness = soberThickness(diameter, length) * view.metre
  const ends: readonly [Point, Point] = [
    { x: centre.x - half, y: centre.y },
    { x: centre.x + half, y: centre.y },
  ]
  const taper = [
    ...yardTaper.map(([along, share]) => [0.5 - along / 2, share] as const).reverse(),
    ...yardTaper.slice(1).map(([along, share]) => [0.5 + along / 2, share] as const),
  ]
  return { outline: tapered(ends, thickness, taper), axis: ends, thickness }
}

/** A spar along the ship. Undefined where an end is not known. */
function boomShape({ kind, inner, outer, diameter }: BoomEnds, view: View): SparShape | undefined {
  if (!inner || !outer || !isSoberPoint(inner) || !isSoberPoint(outer)) return undefined
  const length = Math.hypot(outer.x - inner.x, outer.z - inner.z)
  if (length === 0) return undefined
  const ends: readonly [Point, Point] = [view.at(inner.x, inner.z), view.at(outer.x, outer.z)]
  const thickness = soberThickness(diameter, length) * view.metre
  return { outline: tapered(ends, thickness, boomTaper[kind]), axis: ends, thickness }
}

function tapered(
  [a, b]: readonly [Point, Point],
  thickness: number,
  taper: readonly (readonly [number, number])[],
): readonly Point[] {
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1
  const across = { x: -(b.y - a.y) / length, y: (b.x - a.x) / length }
  const edge = (side: 1 | -1) =>
    taper.map(([along, share]): Point => {
      const off = (side * share * thickness) / 2
      return { x: a.x + (b.x - a.x) * along + across.x * off, y: a.y + (b.y - a.y) * along + across.y * off }
    })
  return [...edge(1), ...edge(-1).reverse()]
}
