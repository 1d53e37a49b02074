import { describe, expect, test } from 'vitest'
import { metres, point3 } from '../../../src/measure/index.ts'
import { sailFigures } from '../../../src/reckon/sails/area.ts'
import type { Corner, ForeAndAftSail, SquareSail } from '../../../src/rig/index.ts'

const span = { source: 'test.rig', start: 0, end: 0 }
const plain = {
  short: undefined,
  foreign: false,
  nameAt: undefined,
  mast: 'fore mast',
  gear: undefined,
  shackled: [],
  toSet: undefined,
  toDouse: undefined,
  reefs: [],
  cloth: { number: undefined, list: undefined, width: undefined },
  conjectural: false,
  credited: undefined,
  span,
}

function square(head: number, foot: number, depth: number, roach = 0): SquareSail {
  return {
    ...plain,
    kind: 'square',
    class: 'topsail',
    name: 'topsail',
    label: 'Topsail',
    yard: 'topsail yard',
    footYard: undefined,
    x: metres(7),
    head: { width: metres(head), height: metres(10 + depth) },
    foot: { width: metres(foot), height: metres(10) },
    roach: metres(roach),
  }
}

function foreAndAft(
  corners: Partial<Record<Corner['name'], readonly [number, number]>>,
  kind: ForeAndAftSail['class'] = 'headsail',
): ForeAndAftSail {
  return {
    ...plain,
    kind: 'fore-and-aft',
    class: kind,
    name: 'jib',
    label: 'Jib',
    on: ['jib stay'],
    sheetedTo: undefined,
    corners: Object.entries(corners).map(([name, [x, z]]) => ({
      name: name as Corner['name'],
      at: point3(x, 0, z),
    })),
  }
}

const areaOf = (sail: SquareSail | ForeAndAftSail) => {
  const { area } = sailFigures(sail)
  return area.known ? area.value : area.because
}

const heightOf = (sail: SquareSail) => {
  const { centroid } = sailFigures(sail)
  return centroid.known ? centroid.value.z - 10 : Number.NaN
}

describe('square sails: mensuration of the trapezium', () => {
  test('topsail, head 10, foot 14, depth 9: area 108, centroid 4.25 above the foot', () => {
    expect(areaOf(square(10, 14, 9))).toBe(108)
    expect(heightOf(square(10, 14, 9))).toBeCloseTo(4.25, 12)
  })

  test('course, head 18, foot 17, depth 8: area 140, centroid 4.038 above the foot', () => {
    expect(areaOf(square(18, 17, 8))).toBe(140)
    expect(heightOf(square(18, 17, 8))).toBeCloseTo(4.038, 3)
  })

  // T. D. Wilson, An Outline of Ship Building, 1873, ch. XVIII: the head from foot, depth and area.
  test('the head constructed from foot 14, depth 9 and area 108 gives that area back', () => {
    const [foot, depth, area] = [14, 9, 108]
    const head = (foot * ((2 * area) / foot - depth)) / depth
    expect(head).toBeCloseTo(10, 9)
    expect(areaOf(square(head, foot, depth))).toBeCloseTo(area, 9)
  })

  test('a roach takes two thirds of its box out of the foot, and lifts the centroid', () => {
    expect(areaOf(square(17.5, 18.34, 6.5, 0.9))).toBeCloseTo(116.48 - 11.004, 3)
    expect(heightOf(square(17.5, 18.34, 6.5, 0.9))).toBeCloseTo(3.523, 3)
    // The same by slices: the foot at y from the middle is raised by the parabola.
    let area = 0
    let moment = 0
    const slices = 20000
    for (let i = 0; i < slices; i++) {
      const y = ((i + 0.5) / slices - 0.5) * 14
      const bottom = 1.5 * (1 - (y / 7) ** 2)
      const top = Math.min(9, (9 * (7 - Math.abs(y))) / 2)
      if (top <= bottom) continue
      area += ((top - bottom) * 14) / slices
      moment += (((top - bottom) * 14) / slices) * ((top + bottom) / 2)
    }
    expect(areaOf(square(10, 14, 9, 1.5))).toBeCloseTo(area, 1)
    expect(heightOf(square(10, 14, 9, 1.5))).toBeCloseTo(moment / area, 2)
  })

  test('the centroid stands in the plane of the sail, on the centreline', () => {
    const { centroid } = sailFigures(square(10, 14, 9))
    expect(centroid.known && [centroid.value.x, centroid.value.y]).toEqual([7, 0])
  })
})

describe('sails that cannot be measured say why', () => {
  test.each([
    [square(10, 14, -1), 'The head of the topsail is not above its foot.'],
    [square(-10, 14, 5), 'The topsail has a width below zero.'],
    [square(0, 0, 5), 'The topsail has no width.'],
    [square(10, 14, 5, 5), 'The roach of the topsail rises to its head.'],
    [square(1e300, 14, 5), 'The topsail has a measure too large to reckon with.'],
    [square(Number.NaN, 14, 5), 'The topsail has a measure too large to reckon with.'],
    [{ ...square(1, 1, 1), x: undefined }, 'The topsail is given no measures.'],
    [{ ...square(1, 1, 1), foot: undefined }, 'The topsail is given no measures.'],
    [foreAndAft({ tack: [0, 0], head: [4, 9] }), 'The jib is given no clew.'],
    [foreAndAft({}), 'The jib is given no tack and no clew and no head.'],
    [foreAndAft({ tack: [0, 0], clew: [5, 0], throat: [0, 4] }), 'The jib is given no peak.'],
    [foreAndAft({ tack: [0, 0], clew: [5, 0], peak: [4, 4] }, 'gaff sail'), 'The jib is given no throat.'],
    [foreAndAft({ tack: [0, 0], clew: [5, 0], head: [9, 0] }), 'The corners of the jib lie in one line.'],
    [
      foreAndAft({ tack: [0, 0], clew: [5, 5], peak: [5, 0], throat: [0, 5] }),
      'Two edges of the jib cross: its corners are out of order.',
    ],
    [
      foreAndAft({ tack: [0, 0], clew: [5, 0], head: [0, 1e9] }),
      'The jib has a measure too large to reckon with.',
    ],
  ])('%#', (sail, because) => {
    expect(areaOf(sail)).toBe(because)
    expect(sailFigures(sail).centroid).toEqual({ known: false, because })
  })

  test('a lateen sail is a triangle with a peak', () => {
    expect(areaOf(foreAndAft({ tack: [0, 0], clew: [6, 0], peak: [0, 9] }, 'lateen sail'))).toBe(27)
  })

  test('a three-cornered gaff topsail needs no throat', () => {
    expect(areaOf(foreAndAft({ tack: [0, 0], clew: [6, 0], head: [0, 9] }, 'gaff topsail'))).toBe(27)
  })
})
