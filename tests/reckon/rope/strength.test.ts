import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Figure, metres, newtons } from '../../../src/measure/index.ts'
import { materials, ropeWeight, shareLeft, strengthOf, thicknessFor } from '../../../src/reckon/rope/index.ts'

const because = (figure: Figure<unknown>) => (figure.known ? '' : figure.because)
const breaking = (material: string, diameter: number) => {
  const strength = strengthOf(material, metres(diameter))
  if (!strength.known) throw new Error(strength.because)
  return strength.value.breaking
}

describe('strength', () => {
  test('the worked example of the page: manila of 28 mm', () => {
    expect(breaking('manila', 0.028)).toBeCloseTo(38_480, -2)
    expect(breaking('manila', 0.028) * shareLeft({ end: 'spliced', age: 'in daily use' })).toBeCloseTo(
      23_090,
      -2,
    )
  })

  test('of a wire with a fall, the fall is meant', () => {
    expect(breaking('wire with spun polyester fall', 0.022)).toBe(breaking('spun polyester', 0.022))
  })

  test('a word that may mean two materials means the weaker', () => {
    expect(breaking('polyester', 0.02)).toBeLessThanOrEqual(breaking('three-strand polyester', 0.02))
    expect(breaking('wire', 0.02)).toBeLessThan(breaking('certified wire', 0.02))
    expect(breaking('manila', 0.02)).toBeLessThan(breaking('modern manila', 0.02))
  })

  test.each([
    [undefined, 0.02, /material of its rope is not said/],
    ['manilla', 0.02, /no table of strength for "manilla". Nearest: manila/],
    ['__proto__', 0.02, /no table of strength/],
    ['manila', 0, /no thickness/],
    ['manila', Number.NaN, /no thickness/],
  ])('%s of %d m is not known', (material, diameter, why) => {
    expect(because(strengthOf(material, metres(diameter)))).toMatch(why)
  })

  test('a thicker rope is never the weaker, and the thickness for a load bears it', () => {
    const size = fc.double({ min: 0.004, max: 0.08, noNaN: true })
    fc.assert(
      fc.property(fc.constantFrom(...materials), size, size, (material, one, other) => {
        const [thin, thick] = one < other ? [one, other] : [other, one]
        expect(breaking(material, thin)).toBeLessThanOrEqual(breaking(material, thick) * (1 + 1e-12))
      }),
    )
    fc.assert(
      fc.property(
        fc.constantFrom(...materials),
        fc.double({ min: 500, max: 400_000, noNaN: true }),
        (material, load) => {
          const thickness = thicknessFor(material, newtons(load))
          const found = thickness.known ? breaking(material, thickness.value) : Number.NaN
          expect(found).toBeGreaterThanOrEqual(load * (1 - 1e-9))
        },
      ),
    )
  })
})

describe('weight', () => {
  test('goes with the square of the thickness', () => {
    const [thin, thick] = [0.012, 0.024].map(size => ropeWeight('spun polyester', metres(size)))
    expect(thin?.known && thick?.known && thick.value / thin.value).toBeCloseTo(4, 12)
  })

  test.each([undefined, 'spaghetti'])('of %s is not known', material => {
    expect(ropeWeight(material, metres(0.02)).known).toBe(false)
  })
})
