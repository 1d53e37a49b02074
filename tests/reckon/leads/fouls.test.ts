import fc from 'fast-check'
import { vec3 } from 'gl-matrix'
import { describe, expect, it } from 'vitest'
import { point3 } from '../../../src/measure/index.ts'
import { foulsOf } from '../../../src/reckon/leads/index.ts'
import { approachWithin, crossingAngle, type Segment } from '../../../src/reckon/leads/segment.ts'
import type { Rig } from '../../../src/rig/index.ts'
import { compiledRig, compiledText } from '../../support/compiled.ts'
import { fleet } from '../../support/fleet.ts'

const segment = (
  from: readonly [number, number, number],
  to: readonly [number, number, number],
): Segment => ({
  from: point3(...from),
  to: point3(...to),
})

const nearest = (one: Segment, other: Segment) =>
  approachWithin(Number.POSITIVE_INFINITY, one, other)?.distance ?? Number.NaN

describe('nearest approach of two stretches', () => {
  it.each([
    ['across each other', segment([0, 0, 0], [2, 0, 0]), segment([1, -1, 1], [1, 1, 1]), 1],
    ['touching', segment([0, 0, 0], [2, 0, 0]), segment([1, -1, 0], [1, 1, 0]), 0],
    ['side by side', segment([0, 0, 0], [2, 0, 0]), segment([0, 3, 0], [2, 3, 0]), 3],
    ['one beyond the other', segment([0, 0, 0], [2, 0, 0]), segment([5, 0, 0], [6, 0, 0]), 3],
    ['end to side', segment([0, 0, 0], [2, 0, 0]), segment([1, 2, 0], [1, 5, 0]), 2],
    ['one without length', segment([0, 0, 0], [4, 0, 0]), segment([3, 2, 0], [3, 2, 0]), 2],
    ['both without length', segment([0, 0, 0], [0, 0, 0]), segment([3, 4, 0], [3, 4, 0]), 5],
  ])('%s', (_, one, other, distance) => {
    expect(nearest(one, other)).toBeCloseTo(distance, 12)
    expect(nearest(other, one)).toBeCloseTo(distance, 12)
    expect(approachWithin(distance - 0.001, one, other)).toBeUndefined()
  })

  // Another library walks along both stretches, step by step: it can find nothing nearer, and something as near.
  it('finds what a walk along both finds', () => {
    const coordinate = fc.double({ min: -20, max: 20, noNaN: true })
    const point = fc.tuple(coordinate, coordinate, coordinate)
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        const steps = Array.from({ length: 41 }, (_, i) => i / 40)
        const along = (from: vec3, to: vec3) => steps.map(t => vec3.lerp(vec3.create(), from, to, t))
        const others = along(vec3.clone(c), vec3.clone(d))
        const walked = Math.min(
          ...along(vec3.clone(a), vec3.clone(b)).flatMap(one =>
            others.map(other => vec3.distance(one, other)),
          ),
        )
        const found = nearest(segment(a, b), segment(c, d))
        const stride = (vec3.distance(a, b) + vec3.distance(c, d)) / 80
        expect(found).toBeLessThanOrEqual(walked + 1e-4)
        expect(found).toBeGreaterThanOrEqual(walked - stride - 1e-4)
      }),
      { numRuns: 60 },
    )
  })

  it('measures the angle as the smaller of the two', () => {
    expect(crossingAngle(segment([0, 0, 0], [1, 0, 0]), segment([0, 0, 0], [-1, 1, 0]))).toBeCloseTo(
      Math.PI / 4,
      12,
    )
  })
})

describe('the worked example of the page', () => {
  const halyard = (name: string, block: string) => `  ${name} single, 8 mm braided polyester, rove single
    high block at ${block}
    through high block to 30.00 m aft 3.00 m port 3.00 m up
`
  const { rig } = compiledText(`rails
  fore cleat   at 10.00 m aft 3.00 m port 1.00 m up, marked FC
  after cleat  at 20.00 m aft 3.00 m port 1.00 m up, marked AC
lines
${halyard('first halyard', '20.00 m aft 3.00 m port 9.00 m up')}${halyard('second halyard', '10.00 m aft 3.04 m port 9.00 m up')}
belay first halyard to fore cleat
belay second halyard to after cleat
`).value

  it('leaves 1.2 cm, 5 m above the water', () => {
    const [crossing, ...others] = foulsOf(rig).crossings
    expect(others).toEqual([])
    expect(crossing?.clear).toBeCloseTo(0.012, 4)
    expect(crossing?.at.z).toBeCloseTo(5, 3)
  })
})

describe('a fleet', () => {
  const { rig } = compiledRig('barque-harrow-tansy').value
  const passings = (count: number) => foulsOf(fleet(rig, count)).crossings

  it('fouls itself as often as its vessels do, and no vessel another', () => {
    const alone = passings(1)
    expect(alone.length).toBeGreaterThan(10)
    expect(passings(3)).toHaveLength(3 * alone.length)
  })

  it('is found the same with its lines in another order', () => {
    const named = (one: Rig) =>
      foulsOf(one)
        .crossings.map(({ line, other }) => [line.address, other.address].toSorted().join(' '))
        .toSorted()
    const alone = fleet(rig, 1)
    expect(named({ ...alone, lines: alone.lines.toReversed() })).toEqual(named(alone))
  })
})

it('a rig without geometry fouls nothing', () => {
  const { rig } = compiledText('lines\n  ensign halyard single\nrails\n  rail, marked R\n    2 pins\n').value
  expect(foulsOf(rig)).toEqual({ crossings: [], chafes: [], overDeck: [], throughMasts: [] })
})
