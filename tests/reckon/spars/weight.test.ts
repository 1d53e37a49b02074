import { describe, expect, test } from 'vitest'
import { kilograms, metres, point3 } from '../../../src/measure/index.ts'
import { sparMass, sparMaterials, taperedVolume } from '../../../src/reckon/spars/index.ts'
import type { Boom, Yard } from '../../../src/rig/index.ts'

const plain = {
  label: 'Spar',
  mast: undefined,
  mass: undefined,
  material: undefined,
  walls: undefined,
  conjectural: false,
  credited: undefined,
  span: { source: 'test.rig', start: 0, end: 0 },
}
const yard: Yard = {
  ...plain,
  kind: 'yard',
  name: 'fore yard',
  length: metres(18.82),
  diameter: metres(0.428),
  middle: undefined,
  hoists: false,
  loweredHeight: undefined,
  bracesTo: undefined,
}
const boom: Boom = {
  ...plain,
  kind: 'boom',
  name: 'boom',
  length: undefined,
  diameter: metres(0.26),
  inner: point3(0, 0, 4),
  outer: point3(3, 0, 8),
  slings: undefined,
  hoists: false,
  loweredHeight: undefined,
  reefs: [],
}
const mass = (spar: Yard | Boom, material = 'pitch pine') => {
  const found = sparMass(spar, material)
  return found.known ? found.value : found.because
}

describe('what a spar weighs', () => {
  test('the worked example of the page', () => {
    expect(mass(yard)).toBeCloseTo(1301, -1)
  })

  test('what the text says goes before any measure', () => {
    expect(mass({ ...yard, mass: kilograms(900) })).toBe(900)
  })

  test('a boom is as long as its ends are apart', () => {
    expect(mass(boom)).toBeCloseTo(0.75 * 5 * (Math.PI / 4) * 0.26 ** 2 * 640.74, 1)
  })

  test('a cylinder by Simpson is a cylinder', () => {
    expect(taperedVolume(6, 2, 2, 2)).toBeCloseTo(12, 12)
  })

  test('every timber has a weight, and a steel tube is of the order of a pine spar', () => {
    for (const material of sparMaterials) expect(mass(yard, material)).toBeGreaterThan(500)
    expect(Number(mass(yard, 'steel')) / Number(mass(yard))).toBeCloseTo(1.19, 1)
  })

  test('what the text says it is of goes before what is taken; walls leave the middle hollow', () => {
    const fir = { ...yard, material: 'douglas fir' }
    expect(Number(mass(fir)) / Number(mass(yard))).toBeCloseTo(537.6 / 640.74, 4)
    expect(mass({ ...fir, walls: metres(0.214) })).toBeCloseTo(Number(mass(fir)), 6)
    // A tube of 200 mm with walls of 8, 100 mm at its ends, 10 m long, of steel.
    const tube = {
      ...yard,
      material: 'steel',
      walls: metres(0.008),
      diameter: metres(0.2),
      length: metres(10),
    }
    const section = (d: number) => (Math.PI / 4) * (d ** 2 - (d - 0.016) ** 2)
    const volume = (10 * (2 * section(0.1) + 4 * section(0.2))) / 6
    expect(mass(tube)).toBeCloseTo(volume * 489 * (0.45359237 / 0.3048 ** 3), 6)
  })

  test.each([
    [{ ...yard, walls: metres(0.25) }, 'pitch pine', "The walls of the fore yard don't fit its thickness."],
    [{ ...yard, walls: metres(0) }, 'pitch pine', /walls/],
    [{ ...yard, material: 'moonbeam' }, 'pitch pine', 'The weight of "moonbeam" is not known.'],
    [
      { ...yard, length: undefined },
      'pitch pine',
      'The fore yard is given neither its weight nor its length.',
    ],
    [
      { ...yard, diameter: undefined },
      'pitch pine',
      'The fore yard is given neither its weight nor its thickness.',
    ],
    [{ ...yard, length: metres(0) }, 'pitch pine', 'The fore yard has a measure of nothing.'],
    [{ ...yard, mass: kilograms(-5), length: undefined }, 'pitch pine', /neither its weight nor its length/],
    [yard, 'pitch pin', 'The weight of "pitch pin" is not known. Nearest: pitch pine.'],
  ])('%#', (spar, material, because) => {
    expect(mass(spar, material)).toMatch(because)
  })
})
