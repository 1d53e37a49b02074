import { describe, expect, it } from 'vitest'
import { metres, point3, radians } from '../../../src/measure/index.ts'
import {
  areaTo,
  armAt,
  curveOf,
  greatestAt,
  notChecked,
  rangeOf,
  sparAreas,
  stabilityOf,
} from '../../../src/reckon/stability/index.ts'
import { compiledText, exampleText } from '../../support/compiled.ts'

const degree = Math.PI / 180
const curve = curveOf(
  (
    [
      [60, 0.5],
      [30, 0.6],
      [90, 0.1],
      [100, -0.1],
    ] as const
  ).map(([angle, arm]) => ({ angle: radians(angle * degree), arm: metres(arm) })),
)

describe('a curve of righting arms', () => {
  it('begins upright, and runs straight from point to point in order', () => {
    expect(armAt(curve, radians(0))).toBe(0)
    expect(armAt(curve, radians(15 * degree))).toBeCloseTo(0.3, 9)
    expect(armAt(curve, radians(45 * degree))).toBeCloseTo(0.55, 9)
    expect(armAt(curve, radians(101 * degree))).toBeUndefined()
  })

  it('has the area of its triangles and trapezia', () => {
    expect(areaTo(curve, radians(60 * degree))).toBeCloseTo((30 * 0.3 + 30 * 0.55) * degree, 9)
  })

  it('comes back to nothing at 95 degrees, and is greatest at 30', () => {
    expect(rangeOf(curve) / degree).toBeCloseTo(95, 9)
    expect(greatestAt(curve) / degree).toBeCloseTo(30, 9)
  })
})

const papers = (facts: string) =>
  exampleText('barque-harrow-tansy').replace(
    '  metacentric height 0.85 m',
    `  metacentric height 0.85 m\n${facts}`,
  )

const reckoned = (facts: string) => {
  const { value, findings } = compiledText(papers(facts), 'barque-harrow-tansy.rig')
  return { findings, stability: stabilityOf(value.rig, value.figures) }
}

const given = `  righting arm 10 deg 0.15 m, 20 deg 0.32 m, 30 deg 0.50 m, 40 deg 0.62 m
    50 deg 0.64 m, 60 deg 0.58 m, 70 deg 0.46 m, 80 deg 0.30 m, 90 deg 0.14 m, 100 deg 0.00 m
  deck edge 24 deg
  exposed waters`

describe('a barque whose papers are given', () => {
  const { findings, stability } = reckoned(given)

  it('is read without a finding', () => {
    expect(findings).toEqual([])
  })

  it('has her numerals, and says that the equations were not checked', () => {
    const { criteria } = stability
    expect(criteria.known).toBe(true)
    const { x, y, z, range } = criteria.known ? criteria.value : ({} as never)
    for (const one of [x, y, z]) {
      expect(one.known && one.value.caution).toBe(notChecked)
      expect(one.known && one.value.has).toBeGreaterThan(0.5)
      expect(one.known && one.value.has).toBeLessThan(5)
    }
    expect(range).toEqual({ has: expect.closeTo(100, 6), asked: 90, isMet: true, caution: undefined })
  })

  it('asks for a metacentric height of some centimetres under bare poles', () => {
    const least = stability.leastMetacentricHeight
    expect(least.known && least.value).toBeGreaterThan(0.05)
    expect(least.known && least.value).toBeLessThan(0.85)
  })

  it('counts her spars and her standing rigging under bare poles: the more of them, the more is asked', () => {
    const { value } = compiledText(papers(given), 'barque-harrow-tansy.rig')
    const least = (rig: typeof value.rig) => {
      const { leastMetacentricHeight } = stabilityOf(rig, value.figures)
      return leastMetacentricHeight.known ? leastMetacentricHeight.value : Number.NaN
    }
    const whole = least(value.rig)
    const bare = { ...value.rig, masts: [], spars: [], standing: [] }
    expect(least(bare)).toBeLessThan(0.8 * whole)
    expect(least({ ...value.rig, masts: [] })).toBeLessThan(whole)
    expect(least({ ...value.rig, standing: [] })).toBeLessThan(whole)
    // A mast of one part, 10 m of it above her bulwark, half a metre thick, and the hull's side unchanged.
    const [mast] = value.rig.masts
    const [side] = sparAreas({ ...bare, masts: [] })
    expect(side).toBeUndefined()
    if (!mast) throw new Error('no mast')
    const top = (value.rig.hull?.lowestSheer?.z ?? 0) + (value.rig.hull?.bulwark ?? 0)
    const section = {
      ...mast.sections[0],
      foot: point3(10, 0, top - 2),
      head: point3(10, 0, top + 10),
      diameter: metres(0.5),
    } as (typeof mast.sections)[number]
    expect(sparAreas({ ...bare, masts: [{ ...mast, sections: [section] }] })).toEqual([
      { area: expect.closeTo(5, 9), height: expect.closeTo(top + 5, 9) },
    ])
  })

  it('has the moment of the proof test where her waters are not exposed', () => {
    expect(stability.proof).toBeUndefined()
    const { proof } = reckoned(given.replace('exposed waters', 'protected waters')).stability
    // 1,111 m2 of sail, 15.08 m up, at a pound on the square foot.
    expect(proof?.known && proof.value / 1000).toBeCloseTo(1111.1 * 15.08 * 0.04788, 0)
  })

  it('heels by some seven degrees close-hauled', () => {
    expect(stability.heel.known && stability.heel.value / degree).toBeCloseTo(6.7, 0)
  })
})

describe('what is not given', () => {
  it.each([
    ['  deck edge 24 deg', 'Her righting arms are not given.'],
    ['  righting arm 10 deg 0.15 m', 'The heel that puts the deck edge under is not given.'],
    ['  righting arm 10 deg 0.15 m\n  deck edge 24 deg', 'It is not said in what waters she sails.'],
  ])('%s: says why', (facts, because) => {
    expect(reckoned(facts).stability.criteria).toEqual({ known: false, because })
  })

  it('leaves the numerals unknown where the curve ends early, or is greatest early', () => {
    const early = reckoned('  righting arm 40 deg 0.60 m\n  deck edge 24 deg\n  exposed waters').stability
      .criteria
    expect(early.known && early.value.x.known).toBe(true)
    expect(early.known && early.value.y).toEqual({
      known: false,
      because: 'The righting arms end before 60 degrees.',
    })
    const low = reckoned('  righting arm 20 deg 0.60 m, 60 deg 0.10 m\n  deck edge 15 deg\n  exposed waters')
    expect(low.stability.criteria.known && low.stability.criteria.value.x.known).toBe(false)
  })
})
