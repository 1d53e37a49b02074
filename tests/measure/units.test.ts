import { describe, expect, test } from 'vitest'
import {
  figureAt,
  kilograms,
  metres,
  radians,
  showAngle,
  showLength,
  showMass,
  unitOf,
  units,
} from '../../src/measure/index.ts'

/** The value in SI of a measure as written; the whole text must be read. */
const si = (written: string) => {
  const read = figureAt(written, 0)
  expect(read?.written).toBe(written)
  return read?.value
}

// NIST Special Publication 811, 2008 ed., Appendix B.8: exact by definition. Values from memory, the page was not opened.
describe('published definitions', () => {
  test('the international inch is 25.4 mm and the foot 0.3048 m', () => {
    expect(units.in.si).toBe(0.0254)
    expect(units.ft.si).toBeCloseTo(0.3048, 15)
  })
  test('the pound is 0.453 592 37 kg', () => expect(units.lb.si).toBe(0.45359237))
  test('the long ton of 2240 lb is 1016.046 908 8 kg', () =>
    expect(units['long tons'].si).toBeCloseTo(1016.0469088, 9))
  test('the pound-force is 4.448 221 615 260 5 N', () =>
    expect(units.lbf.si).toBeCloseTo(4.4482216152605, 12))
  test('a degree is pi/180 rad', () => expect(units.deg.si).toBe(Math.PI / 180))
})

describe('measures as written', () => {
  test.each([
    ['12.40 m', 12.4],
    ['320mm', 0.32],
    ['9,40 m', 9.4],
    ['35 %', 0.35],
    ['165 t', 165_000],
    ['½ in', 0.0127],
    ['2 1/2 in', 0.0635],
    ['2½ in', 0.0635],
  ])('%s', (written, value) => expect(si(written)).toBe(value))

  test.each(['41 ft 6 in', '41′ 6″', `41' 6"`, '41 feet 6 inches', '41ft 6in'])('%s', written =>
    expect(si(written)).toBeCloseTo(41.5 * 0.3048, 12),
  )

  test('"in" before "all" or "a watch" is no inch', () => {
    expect(figureAt('14 in all', 0)).toMatchObject({ written: '14', dimension: undefined })
    expect(figureAt('5 in a watch', 0)).toMatchObject({ written: '5', dimension: undefined })
    expect(figureAt('2 in round', 0)).toMatchObject({ written: '2 in', dimension: 'length' })
  })

  test('a quotation mark that does not touch its number is none', () =>
    expect(figureAt('6 "Loose"', 0)).toMatchObject({ written: '6', dimension: undefined }))

  test.each([
    ['1e999 m', 'too-large'],
    ['9'.repeat(400), 'too-large'],
    ['1/0 m', 'too-large'],
    ['−0.5 m', 'negative'],
    ['1e3 m', 'exponent'],
    ['1,250 kg', 'doubtful-comma'],
  ])('%s is told as %s', (written, fault) => expect(figureAt(written, 0)).toMatchObject({ written, fault }))

  test('minus zero is zero', () => expect(Object.is(figureAt('-0 m', 0)?.value, 0)).toBe(true))
  test('words that are no unit are left alone', () => {
    expect(unitOf('furlongs')).toBeUndefined()
    expect(figureAt('12 furlongs', 0)?.written).toBe('12')
  })
})

describe('measures shown', () => {
  test.each([
    ['m', '12.65 m'],
    ['mm', '12649 mm'],
    ['ft', '41.50 ft'],
    ['ft and in', '41 ft 6 in'],
  ] as const)('12.6492 m in %s', (unit, shown) => expect(showLength(metres(12.6492), unit)).toBe(shown))

  test('feet and inches round over into the next foot', () => {
    expect(showLength(metres(0.3048 * 2 - 0.002), 'ft and in')).toBe('2 ft')
    expect(showLength(metres(0.0127), 'ft and in')).toBe('1/2 in')
    expect(showLength(metres(0), 'ft and in')).toBe('0 in')
  })
  test('no minus stands before a zero', () => expect(showLength(metres(-0.001), 'm')).toBe('0.00 m'))
  test('weights and angles', () => {
    expect(showMass(kilograms(165_000), 't')).toBe('165.0 t')
    expect(showMass(kilograms(305.4), 'kg')).toBe('305 kg')
    expect(showAngle(radians(Math.PI / 60))).toBe('3.0°')
  })
})
