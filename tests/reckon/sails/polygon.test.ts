import { polygonArea, polygonCentroid } from 'd3-polygon'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { edgesCross, type PlanePoint, polygonFigure } from '../../../src/reckon/sails/polygon.ts'

const at = (...places: readonly (readonly [number, number])[]): readonly PlanePoint[] =>
  places.map(([x, z]) => ({ x, z }))

describe('area and centroid of a polygon, by plane geometry', () => {
  test('right triangle of foot 6 and luff 9', () => {
    const figure = polygonFigure(at([0, 0], [6, 0], [0, 9]))
    expect(figure?.area).toBe(27)
    expect(figure?.centroid.x).toBeCloseTo(2, 12)
    expect(figure?.centroid.z).toBeCloseTo(3, 12)
  })

  test('general triangle: the mean of its corners', () => {
    const figure = polygonFigure(at([0, 0], [12, 1], [2, 10]))
    expect(figure?.area).toBe(59)
    expect(figure?.centroid.x).toBeCloseTo(14 / 3, 12)
    expect(figure?.centroid.z).toBeCloseTo(11 / 3, 12)
  })

  const gaffSail = at([0, 0], [10, 1], [7, 13], [0, 8])

  // T. Hamernik, "CE for four-sided sails", Duckworks column 2005: both diagonals, two triangles each.
  test('gaff sail, against the double-diagonal drawing', () => {
    const figure = polygonFigure(gaffSail)
    expect(figure?.area).toBe(89.5)
    expect(figure?.centroid.x).toBeCloseTo(4.624, 3)
    expect(figure?.centroid.z).toBeCloseTo(5.397, 3)

    const [tack, clew, peak, throat] = gaffSail as [PlanePoint, PlanePoint, PlanePoint, PlanePoint]
    const halves = [
      [tack, clew, peak],
      [tack, peak, throat],
      [clew, peak, throat],
      [tack, clew, throat],
    ].map(triangle => polygonFigure(triangle))
    expect(halves.map(half => half?.area)).toEqual([61.5, 28, 49.5, 40])
    const crossing = meeting(...(halves.map(half => half?.centroid) as Four))
    expect(crossing.x).toBeCloseTo(figure?.centroid.x ?? Number.NaN, 9)
    expect(crossing.z).toBeCloseTo(figure?.centroid.z ?? Number.NaN, 9)
  })

  test('the shortcut of crossing one centroid line with the diagonal is not what is done', () => {
    const [tack, clew, peak, throat] = gaffSail as [PlanePoint, PlanePoint, PlanePoint, PlanePoint]
    const below = polygonFigure([tack, clew, peak])?.centroid as PlanePoint
    const above = polygonFigure([tack, peak, throat])?.centroid as PlanePoint
    const shortcut = meeting(below, above, tack, peak)
    expect(shortcut.x).toBeCloseTo(3.376, 3)
    expect(shortcut.z).toBeCloseTo(6.27, 3)
    const figure = polygonFigure(gaffSail)
    const { x = Number.NaN, z = Number.NaN } = figure?.centroid ?? {}
    expect(Math.hypot(x - shortcut.x, z - shortcut.z)).toBeCloseTo(1.52, 2)
  })
})

describe('against an independent library of polygons', () => {
  test('any triangle', () => {
    const number = fc.double({ min: -1000, max: 1000, noNaN: true })
    const corner = fc.tuple(number, number)
    fc.assert(
      fc.property(corner, corner, corner, (...corners) => {
        const figure = polygonFigure(at(...corners))
        const area = Math.abs(polygonArea(corners))
        fc.pre(area > 1e-3)
        const [x, z] = polygonCentroid(corners)
        expect(figure?.area).toBeCloseTo(area, 6)
        expect(figure?.centroid.x).toBeCloseTo(x, 4)
        expect(figure?.centroid.z).toBeCloseTo(z, 4)
      }),
    )
  })

  test('any star-shaped polygon, either way round', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.5, max: 40, noNaN: true }), { minLength: 3, maxLength: 24 }),
        fc.boolean(),
        (radii, widdershins) => {
          const ring = radii.map((r, i): [number, number] => {
            const angle = (2 * Math.PI * i) / radii.length
            return [300 + r * Math.cos(angle), 20 + r * Math.sin(angle)]
          })
          if (widdershins) ring.reverse()
          const figure = polygonFigure(at(...ring))
          const [x, z] = polygonCentroid(ring)
          expect(edgesCross(at(...ring))).toBe(false)
          expect(figure?.area).toBeCloseTo(Math.abs(polygonArea(ring)), 7)
          expect(figure?.centroid.x).toBeCloseTo(x, 7)
          expect(figure?.centroid.z).toBeCloseTo(z, 7)
        },
      ),
    )
  })
})

describe('corners that make no sail', () => {
  test('fewer than three, or in one line', () => {
    expect(polygonFigure([])).toBeUndefined()
    expect(polygonFigure(at([1, 1]))).toBeUndefined()
    expect(polygonFigure(at([0, 0], [1, 1]))).toBeUndefined()
    expect(polygonFigure(at([0, 0], [1, 1.1], [10, 11]))).toBeUndefined()
    expect(polygonFigure(at([0, 0], [Number.POSITIVE_INFINITY, 0], [0, 1]))).toBeUndefined()
  })

  test('edges that cross or touch', () => {
    expect(edgesCross(at([0, 0], [1, 1], [1, 0], [0, 1]))).toBe(true)
    expect(edgesCross(at([0, 0], [4, 0], [2, 0], [2, 3]))).toBe(true)
    expect(edgesCross(at([0, 0], [1, 0], [1, 1], [0, 1]))).toBe(false)
    expect(edgesCross(at([0, 0], [1, 0], [0, 1]))).toBe(false)
  })
})

type Four = [PlanePoint, PlanePoint, PlanePoint, PlanePoint]

/** Where the line through a and b meets the line through c and d. */
function meeting(...[a, b, c, d]: Four): PlanePoint {
  const cross = (p: PlanePoint, q: PlanePoint) => p.x * q.z - p.z * q.x
  const ab = { x: b.x - a.x, z: b.z - a.z }
  const cd = { x: d.x - c.x, z: d.z - c.z }
  const t = cross({ x: c.x - a.x, z: c.z - a.z }, cd) / cross(ab, cd)
  return { x: a.x + t * ab.x, z: a.z + t * ab.z }
}
