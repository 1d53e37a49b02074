import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { metresPerSecond, radians } from '../../../src/measure/index.ts'
import { braceLimit, type Course, fanByRule, fanOf, usualLimit } from '../../../src/reckon/brace/index.ts'
import { reckon } from '../../../src/reckon/index.ts'
import { apparentWind, knot, trueWind } from '../../../src/reckon/wind/index.ts'
import type { Yard } from '../../../src/rig/index.ts'
import { compiledRig, compiledText } from '../../support/compiled.ts'

const degree = Math.PI / 180
const course = (knots: number, degrees: number, ship: number): Course => ({
  wind: { speed: metresPerSecond(knots * knot), angle: radians(degrees * degree) },
  ship: metresPerSecond(ship * knot),
})

const { rig } = compiledRig('barque-harrow-tansy').value
const fore = rig.masts.find(({ word }) => word === 'fore')

describe('the worked example of the page', () => {
  const fan = fore && fanOf(fore, rig, course(15, 67.5, 6))
  const rounded = (angle: number) => Math.round((angle / degree) * 10) / 10

  it('has the five yards of the fore mast by both ways', () => {
    const yards = fan?.known ? fan.value : []
    expect(
      yards.map(({ yard, apparent, byRule, byGradient }) => [
        yard,
        rounded(apparent.angle),
        rounded(byRule),
        rounded(byGradient),
      ]),
    ).toEqual([
      ['fore yard', 50, 36, 36],
      ['fore lower topsail yard', 50.5, 40, 36.4],
      ['fore upper topsail yard', 50.9, 44, 41.2],
      ['fore topgallant yard', 51.2, 48, 37.2],
      ['fore royal yard', 51.4, 52, 37.4],
    ])
  })

  it("has Dana's half points beside them, by the wind only", () => {
    const yards = fan?.known ? fan.value : []
    expect(yards.map(({ byHalfPoints: one }) => one.known && rounded(one.value))).toEqual([
      36, 41.6, 47.3, 52.9, 58.5,
    ])
    const free = fore && fanOf(fore, rig, course(15, 90, 6))
    expect(free?.known && free.value.every(({ byHalfPoints }) => !byHalfPoints.known)).toBe(true)
  })

  it('stops the upper topsail yard at the topmast backstays, and tells no limit of a yard on a truss', () => {
    const limit = (name: string) => braceLimit(rig.sparAt.get(name) as Yard, rig)
    const topsail = limit('fore upper topsail yard')
    expect(topsail.known && topsail.value.stoppedBy).toBe('fore topmast backstays')
    expect(topsail.known && rounded(topsail.value.angle)).toBe(41.2)
    expect(limit('fore yard')).toEqual({
      known: false,
      because: 'How far its truss holds the fore yard off the mast is not said.',
    })
  })
})

describe('a fan', () => {
  it('is square before the wind, by both ways', () => {
    const fan = fore && fanOf(fore, rig, course(15, 180, 6))
    for (const { byRule, byGradient } of fan?.known ? fan.value : []) {
      expect(byRule).toBeCloseTo(Math.PI / 2, 9)
      expect(byGradient).toBeCloseTo(Math.PI / 2, 9)
    }
    expect(fan?.known).toBe(true)
  })

  it('is the same on either tack', () => {
    const braced = (degrees: number) => {
      const fan = fore && fanOf(fore, rig, course(15, degrees, 6))
      return fan?.known ? fan.value.map(({ byRule, byGradient }) => [byRule, byGradient]) : undefined
    }
    expect(braced(-70)).toEqual(braced(70))
    expect(braced(70)).toBeDefined()
  })

  it('never comes sharper going up, nor squarer than square', () => {
    const angle = fc.double({ min: 0, max: Math.PI, noNaN: true })
    fc.assert(
      fc.property(angle, fc.integer({ min: 1, max: 7 }), (wind, yards) => {
        const fan = fanByRule(radians(wind), usualLimit, yards)
        expect(fan).toHaveLength(yards)
        fan.forEach((yard, i) => {
          expect(yard).toBeGreaterThanOrEqual(fan[i - 1] ?? usualLimit)
        })
        expect(Math.max(...fan)).toBeLessThanOrEqual(Math.PI / 2)
      }),
    )
  })

  it('is unknown of a mast without yards, and of yards without height', () => {
    const mizzen = rig.masts.find(({ word }) => word === 'mizzen')
    expect(mizzen && fanOf(mizzen, rig, course(15, 70, 6))).toEqual({
      known: false,
      because: 'The mizzen mast crosses no yards.',
    })
    const bare = compiledText('masts\n  fore mast\nspars\n  fore yard, fixed 9.00 m up\n').value.rig
    const [mast] = bare.masts
    expect(mast && fanOf(mast, bare, course(15, 70, 6)).known).toBe(false)
  })
})

it('the true wind of the wind felt is the true wind', () => {
  const speed = fc.double({ min: 0.1, max: 40, noNaN: true })
  const off = fc.double({ min: -3.1, max: 3.1, noNaN: true })
  fc.assert(
    fc.property(speed, off, speed, (wind, angle, ship) => {
      const felt = apparentWind(
        { speed: metresPerSecond(wind), angle: radians(angle) },
        metresPerSecond(ship),
      )
      const back = trueWind(felt, metresPerSecond(ship))
      expect(back.speed).toBeCloseTo(wind, 9)
      expect(Math.cos(back.angle)).toBeCloseTo(Math.cos(angle), 6)
    }),
  )
})

describe('a yard that says how sharp it braces', () => {
  const text = (said: string) => `masts
  fore mast, stepped 12.00 m aft 2.70 m up, yards 0.50 m forward
    lower mast to 16.00 m up

spars
  fore yard, 18.00 m long, fixed 12.00 m up${said}
`
  const yardOf = (said: string) => {
    const { rig } = compiledText(text(said)).value
    const mast = rig.masts[0]
    const fan = mast && fanOf(mast, rig, course(15, 67.5, 6))
    return fan?.known ? fan.value[0] : undefined
  }

  it('goes so far in the fan, and no sharper', () => {
    const said = yardOf(', braces to 42 deg')
    expect(said?.limit).toEqual({ known: true, value: { angle: 42 * degree, stoppedBy: 'as the text says' } })
    expect(said?.byRule).toBeCloseTo(42 * degree, 9)
    expect(yardOf('')?.byRule).toBeCloseTo(36 * degree, 9)
    expect(yardOf(', braces to 25 deg')?.byRule).toBeCloseTo(29 * degree, 1)
  })

  it('wants braces that reach so far: the sharper, the more rope', () => {
    const { value } = compiledRig('barque-harrow-tansy')
    const sharp = (angle: number | undefined) => {
      const spars = value.rig.spars.map(spar =>
        spar.kind === 'yard'
          ? { ...spar, bracesTo: angle === undefined ? undefined : radians(angle * degree) }
          : spar,
      )
      const rig = { ...value.rig, spars, sparAt: new Map(spars.map(spar => [spar.name, spar])) }
      const brace = rig.lines.find(({ words }) => words === 'fore royal brace')
      const figure = reckon(rig)
        .leads()
        .get(brace?.address ?? '')?.length
      return figure?.known ? figure.value : Number.NaN
    }
    expect(sharp(36)).toBeCloseTo(sharp(undefined), 9)
    expect(sharp(30)).toBeGreaterThan(sharp(36))
    expect(sharp(45)).toBeLessThan(sharp(36))
  })
})
