import { polygonArea, polygonCentroid } from 'd3-polygon'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { reefedFigures, sailFigures } from '../../../src/reckon/sails/index.ts'
import { compiledText } from '../../support/compiled.ts'

/** A gaff sail 10 m on the foot and 8 m on the luff, its foot level; a topsail 9 m deep. */
const text = (depth: number) => `masts
  main mast, stepped 10.00 m aft 1.00 m up
    lower mast to 30.00 m up

spars
  main gaff, from 10.00 m aft 10.00 m up to 17.00 m aft 15.00 m up
  main boom, from 10.00 m aft 2.00 m up to 20.00 m aft 2.00 m up
  main topsail yard, 10.00 m long, hoists from 18.00 m to 25.00 m up

sails
  mainsail, gaff sail on main gaff and main boom
    tack 10.00 m aft 2.00 m up, throat 10.00 m aft 10.00 m up
    peak 17.00 m aft 15.00 m up, clew 20.00 m aft 2.00 m up
    reef ${depth.toFixed(2)} m above foot
  main topsail, square topsail on main topsail yard
    head 10.00 m wide 25.00 m up, foot 14.00 m wide 16.00 m up
    reef ${depth.toFixed(2)} m below head
`
const sailOf = (name: string, depth: number) => {
  const sail = compiledText(text(depth)).value.rig.sailAt.get(name)
  if (!sail) throw new Error(name)
  return sail
}
const figures = (name: string, depth: number) => {
  const { area, centroid } = reefedFigures(sailOf(name, depth), 1)
  if (!area.known || !centroid.known) throw new Error(area.known ? '' : area.because)
  return { area: area.value, ...centroid.value }
}

describe('a reefed sail', () => {
  test('a gaff sail is what stands above its band, lowered to the boom', () => {
    // The leech runs from (20, 2) to (17, 15): 2 m up it stands at 20 - 3 x 2 / 13.
    const left: [number, number][] = [
      [10, 4],
      [20 - 6 / 13, 4],
      [17, 15],
      [10, 10],
    ]
    const [x, z] = polygonCentroid(left)
    const reefed = figures('mainsail', 2)
    expect(reefed.area).toBeCloseTo(Math.abs(polygonArea(left)), 9)
    expect(reefed.x).toBeCloseTo(x, 9)
    expect(reefed.z).toBeCloseTo(z - 2, 9)
  })

  test('a topsail loses the top of its trapezium, and its yard comes down by that', () => {
    // 3 m of 9 below a head of 10 m over a foot of 14: 11.33 m wide at the band.
    const reefed = figures('main topsail', 3)
    expect(reefed.area).toBeCloseTo(((34 / 3 + 14) / 2) * 6, 9)
    expect(reefed.z).toBeCloseTo(16 + (6 * (14 + (2 * 34) / 3)) / (3 * (34 / 3 + 14)), 9)
  })

  test('is smaller and lower the deeper the reef, and the whole sail with none', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 600 }), fc.integer({ min: 5, max: 100 }), (depth, more) => {
        for (const name of ['mainsail', 'main topsail']) {
          const [shallow, deep] = [figures(name, depth / 100), figures(name, (depth + more) / 100)]
          expect(deep.area).toBeLessThan(shallow.area)
          expect(deep.z).toBeLessThan(shallow.z)
        }
      }),
      { numRuns: 12 },
    )
    const sail = sailOf('mainsail', 1)
    expect(reefedFigures(sail, 0)).toEqual(sailFigures(sail))
  })

  test.each([
    ['mainsail', 1, 2, 'The mainsail has not so many reefs.'],
    ['mainsail', 14, 1, 'The reef of the mainsail lies above its luff.'],
    ['main topsail', 9.5, 1, 'The head of the main topsail is not above its foot.'],
  ])('%s, %d m, %d reefs, is not known', (name, depth, reefs, because) => {
    expect(reefedFigures(sailOf(name, depth), reefs).area).toEqual({ known: false, because })
  })
})
