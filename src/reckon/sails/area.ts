import {
  type Figure,
  known,
  type Point3,
  point3,
  type SquareMetres,
  squareMetres,
  unknown,
} from '../../measure/index.ts'
import type { Corner, ForeAndAftSail, Sail, SquareSail, Studdingsail } from '../../rig/index.ts'
import { edgesCross, type PlaneFigure, polygonFigure } from './polygon.ts'

/** What is reckoned of one sail: the area of its flat outline, and the centroid of that area. */
export interface SailFigures {
  readonly area: Figure<SquareMetres>
  /** x in the sail's plane for a square sail, y always 0. */
  readonly centroid: Figure<Point3>
}

/** Area and centroid of one sail from its geometry; `area.md` has the formulas. */
export function sailFigures(sail: Sail): SailFigures {
  switch (sail.kind) {
    case 'square':
      return squareFigures(sail)
    case 'fore-and-aft':
      return foreAndAftFigures(sail)
    case 'studdingsail':
      return studdingsailFigures(sail)
  }
}

/** A trapezium less the parabola that the roach cuts out of its foot. */
function squareFigures(sail: SquareSail): SailFigures {
  const { x, head, foot, roach } = sail
  if (x === undefined || !head || !foot) return neither(`The ${sail.name} is given no measures.`)
  const shape: Trapezium = {
    head: head.width,
    foot: foot.width,
    depth: head.height - foot.height,
    roach,
  }
  const numbers = [x, head.height, foot.height, ...Object.values(shape)]
  if (!numbers.every(isMeasurable)) return neither(`The ${sail.name} has a measure too large to reckon with.`)
  const fault = trapeziumFault(shape, sail.name)
  if (fault) return neither(fault)

  const { area, height } = trapeziumFigure(shape)
  return { area: known(squareMetres(area)), centroid: known(point3(x, 0, foot.height + height)) }
}

/** A square sail's measures, in metres. */
interface Trapezium {
  readonly head: number
  readonly foot: number
  readonly depth: number
  readonly roach: number
}

/** Area, and height of the centroid above the clews. */
function trapeziumFigure({ head, foot, depth, roach }: Trapezium): { area: number; height: number } {
  const cloth = ((head + foot) * depth) / 2
  const clothHeight = (depth * (foot + 2 * head)) / (3 * (head + foot))
  // A parabolic segment is two thirds of its box, and its centroid lies two fifths up.
  const hollow = (2 * foot * roach) / 3
  const hollowHeight = (2 * roach) / 5
  const area = cloth - hollow
  return { area, height: (cloth * clothHeight - hollow * hollowHeight) / area }
}

function trapeziumFault({ head, foot, depth, roach }: Trapezium, name: string): string | undefined {
  if (depth <= 0) return `The head of the ${name} is not above its foot.`
  if (head < 0 || foot < 0) return `The ${name} has a width below zero.`
  if (head + foot === 0) return `The ${name} has no width.`
  if (roach >= depth) return `The roach of the ${name} rises to its head.`
  return undefined
}

function foreAndAftFigures(sail: ForeAndAftSail): SailFigures {
  const fault = cornersFault(sail)
  if (fault) return neither(fault)
  const corners = sail.corners.map(corner => corner.at)
  if (edgesCross(corners))
    return neither(`Two edges of the ${sail.name} cross: its corners are out of order.`)
  const figure = polygonFigure(corners)
  return figure ? both(figure) : neither(`The corners of the ${sail.name} lie in one line.`)
}

/** Of one of the two, which lies athwart; the centroid of both together is on the centreline. */
function studdingsailFigures({ name, x, corners }: Studdingsail): SailFigures {
  if (x === undefined || corners.length < 4) return neither(`The ${name} is not given all its corners.`)
  const places = corners.map(({ at }) => point3(at.y, 0, at.z))
  if (!places.every(at => isMeasurable(at.x) && isMeasurable(at.z)))
    return neither(`The ${name} has a measure too large to reckon with.`)
  if (edgesCross(places)) return neither(`Two edges of the ${name} cross: its corners are out of order.`)
  const figure = polygonFigure(places)
  if (!figure) return neither(`The corners of the ${name} lie in one line.`)
  return { area: known(squareMetres(figure.area)), centroid: known(point3(x, 0, figure.centroid.z)) }
}

function cornersFault(sail: ForeAndAftSail): string | undefined {
  const missing = missingCorners(sail)
  if (missing.length > 0) return `The ${sail.name} is given no ${missing.join(' and no ')}.`
  const measurable = sail.corners.every(({ at }) => isMeasurable(at.x) && isMeasurable(at.z))
  return measurable ? undefined : `The ${sail.name} has a measure too large to reckon with.`
}

const fourCornered: readonly ForeAndAftSail['class'][] = ['gaff sail', 'lugsail']

/** Corners the sail must have and has not: three, or four where it has a peak or a throat. */
export function missingCorners(sail: ForeAndAftSail): readonly Corner['name'][] {
  const given = new Set(sail.corners.map(corner => corner.name))
  const quadrilateral =
    !given.has('head') &&
    (fourCornered.includes(sail.class) || given.has('throat') || sail.corners.length > 3)
  const lateen = sail.class === 'lateen sail' && given.has('peak')
  const due: readonly Corner['name'][] = quadrilateral
    ? ['tack', 'clew', 'peak', 'throat']
    : ['tack', 'clew', lateen ? 'peak' : 'head']
  return due.filter(name => !given.has(name))
}

/** A million metres of spar is a slip of the pen; beyond it squares and moments lose their meaning. */
const isMeasurable = (n: number): boolean => Number.isFinite(n) && Math.abs(n) <= 1e6

const both = ({ area, centroid }: PlaneFigure): SailFigures => ({
  area: known(squareMetres(area)),
  centroid: known(point3(centroid.x, 0, centroid.z)),
})

const neither = (because: string): SailFigures => ({ area: unknown(because), centroid: unknown(because) })
