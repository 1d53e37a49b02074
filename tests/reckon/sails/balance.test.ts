import { describe, expect, test } from 'vitest'
import { metres, point3, squareMetres } from '../../../src/measure/index.ts'
import { centreOfEffort, type Effort, leadOf } from '../../../src/reckon/sails/balance.ts'

/** Area, x forward of midships and z above the water; the program's x runs aft, so its sign turns. */
const sail = (area: number, forward: number, up: number): Effort => ({
  area: squareMetres(area),
  at: point3(-forward, 0, up),
})

// The method of area moments as in Encyclopaedia Britannica, 9th ed., "Sail"; the sums are exact arithmetic.
const jib = sail(60, 19, 14)
const others = [
  sail(130, 9, 7),
  sail(108, 9.3, 14.5),
  sail(150, -4, 7.2),
  sail(120, -4.2, 15.5),
  sail(95, -14, 8),
]

describe('centre of effort by area moments', () => {
  test('six sails', () => {
    const centre = centreOfEffort([jib, ...others])
    expect(centre.known && -centre.value.x).toBeCloseTo(880.4 / 663, 9)
    expect(centre.known && centre.value.z).toBeCloseTo(7016 / 663, 9)
    expect(centre.known && -centre.value.x).toBeCloseTo(1.328, 3)
    expect(centre.known && centre.value.z).toBeCloseTo(10.582, 3)
  })

  test('the jib taken in: the centre goes 1.758 m aft', () => {
    const before = centreOfEffort([jib, ...others])
    const after = centreOfEffort(others)
    expect(after.known && -after.value.x).toBeCloseTo(-0.431, 3)
    expect(after.known && after.value.z).toBeCloseTo(10.242, 3)
    expect(before.known && after.known && after.value.x - before.value.x).toBeCloseTo(1.758, 3)
  })

  test('no sail at all has no centre, and says so', () => {
    expect(centreOfEffort([])).toEqual({ known: false, because: 'No sail is set.' })
  })
})

describe('lead', () => {
  const vessel = { lateralCentre: point3(-0.3, 0, -1.5), waterline: metres(30) }

  test('is 1.028 m, 3.43 % of a waterline of 30 m', () => {
    const lead = leadOf({ vessel: vessel as never }, point3(-880.4 / 663, 0, 10))
    expect(lead.known && lead.value.metres).toBeCloseTo(1.028, 3)
    expect(lead.known && lead.value.share.known && lead.value.share.value).toBeCloseTo(0.0343, 4)
  })

  test('is unknown without a lateral centre, and its share without a waterline', () => {
    expect(leadOf({ vessel: { waterline: metres(30) } as never }, point3(0, 0, 0)).known).toBe(false)
    const lead = leadOf({ vessel: { ...vessel, waterline: undefined } as never }, point3(-2, 0, 0))
    expect(lead.known && lead.value.share).toEqual({
      known: false,
      because: "The waterline's length is not given.",
    })
  })

  test('is negative where the effort lies abaft the lateral centre', () => {
    const lead = leadOf({ vessel: vessel as never }, point3(2, 0, 8))
    expect(lead.known && lead.value.metres).toBeCloseTo(-2.3, 9)
  })
})
