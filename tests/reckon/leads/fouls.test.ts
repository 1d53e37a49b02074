import fc from 'fast-check'
import { vec3 } from 'gl-matrix'
import { describe, expect, it } from 'vitest'
import { point3 } from '../../../src/measure/index.ts'
import { foulsOf } from '../../../src/reckon/leads/index.ts'
import { approachWithin, crossingAngle, type Segment } from '../../../src/reckon/leads/segment.ts'
import type { Rig } from '../../../src/rig/index.ts'
import { compiledRig, compiledText, exampleRigs } from '../../support/compiled.ts'
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

describe('braces with the yard braced sharp', () => {
  // Square, the starboard brace goes from (20, 3, 10) to the arm at (10, 8, 10), clear of all. The yard turned to 36 degrees, its
  // starboard arm aft, the arm is at (10 + 8 cos 36, 8 sin 36, 10): a backstay is put across half way to it.
  const arm = [10 + 8 * Math.cos(Math.PI / 5), 8 * Math.sin(Math.PI / 5)] as const
  const half = [(20 + arm[0]) / 2, (3 + arm[1]) / 2] as const
  const text = (out: number) => `bring in standard gear

masts
  fore mast, stepped 10.00 m aft 2.00 m up
    lower mast to 14.00 m up

spars
  fore yard, 16.00 m long, fixed 10.00 m up
    gear yard
      brace block at 20.00 m aft 3.00 m out 10.00 m up
      brace rove single
        through brace block to yardarm

stays
  fore backstays, 1 a side from ${half[0].toFixed(3)} m aft ${(half[1] + out).toFixed(3)} m out 15.00 m up to ${half[0].toFixed(3)} m aft ${(half[1] + out).toFixed(3)} m out 5.00 m up

rails
  fore rail, port and starboard, marked FR
    3 pins from 20.00 m aft 3.00 m out to 20.60 m aft 3.00 m out, 2.00 m up

belay on fore rail
  1  yard brace
`
  const chafes = (out: number) =>
    foulsOf(compiledText(text(out)).value.rig).braced.chafes.map(({ line, part }) => [line.side, part.name])

  it('chafe a backstay that stands in the way, on either tack', () => {
    expect(chafes(0).toSorted()).toEqual([
      ['port', 'fore backstays, port'],
      ['starboard', 'fore backstays, starboard'],
    ])
    expect(foulsOf(compiledText(text(0)).value.rig).chafes).toEqual([])
    expect(chafes(1)).toEqual([])
  })

  it('is found in every example vessel, and none of them chafes', () => {
    for (const name of exampleRigs) {
      const { crossings, chafes } = foulsOf(compiledRig(name).value.rig).braced
      for (const { clear } of [...crossings, ...chafes]) expect(clear, name).toBeGreaterThan(0.05)
    }
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
  expect(foulsOf(rig)).toEqual({
    crossings: [],
    chafes: [],
    braced: { crossings: [], chafes: [] },
    overDeck: [],
    throughMasts: [],
  })
})
