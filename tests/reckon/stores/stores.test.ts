import { describe, expect, it } from 'vitest'
import { metres } from '../../../src/measure/index.ts'
import { coilOf120Fathoms, solve, storesOf } from '../../../src/reckon/index.ts'
import { compiledRig, compiledText } from '../../support/compiled.ts'

const { rig, figures } = compiledRig('barque-harrow-tansy').value
const order = { coil: coilOf120Fathoms, clothWidth: metres(0.6096) }

describe('the stores of a barque', () => {
  it('cut every line once, and no coil longer than it is', async () => {
    const { cordage, unordered, coil } = await storesOf(rig, figures, order, solve)
    const lengths = [...figures.leads().values()].flatMap(({ length }) =>
      length.known ? [length.value] : [],
    )
    const cut = cordage.flatMap(({ cuts }) => cuts.map(({ length }) => length))
    expect(sum(cut)).toBeCloseTo(sum(lengths), 6)
    expect(unordered).toEqual([])
    for (const { cutting, cuts } of cordage) {
      expect(cutting.coils.flat()).toHaveLength(cuts.length)
      expect(cutting.atLeast).toBe(cutting.coils.length)
      for (const pieces of cutting.coils) expect(sum(pieces)).toBeLessThanOrEqual(coil)
    }
  })

  it('have the blocks of a luff for each sheet rove so: a double and a single', async () => {
    const { blocks } = await storesOf(rig, figures, order, solve)
    const sheets = blocks.filter(({ lines }) => lines.includes('Spanker sheet'))
    expect(sheets.map(({ sheaves }) => sheaves)).toEqual([2, 1])
    expect(sheets[0]?.count).toBe(2)
  })

  it('have a pin for every place that is one', async () => {
    const { pins } = await storesOf(rig, figures, order, solve)
    const places = rig.rails
      .filter(({ kind }) => !/cleat|kevel/.test(kind))
      .reduce((n, rail) => n + rail.places.length, 0)
    expect(sum(pins.map(({ count }) => count))).toBe(places)
  })

  it('have canvas for the area of every sail, and a tenth more of cloth', async () => {
    const { canvas } = await storesOf(rig, figures, order, solve)
    const area = sum(canvas.map(one => one.area))
    expect(canvas.every(({ mass }) => mass.known && mass.value > 0)).toBe(true)
    expect(figures.total.known && area).toBeCloseTo(figures.total.known ? figures.total.value : 0, 6)
    expect(sum(canvas.map(one => one.cloth)) * 0.6096).toBeCloseTo(area * 1.1, 6)
  })
})

describe('canvas', () => {
  const text = (cloth: string) =>
    `bring in standard gear

stays
  jib stay

sails
  jib, headsail on jib stay${cloth}
    tack 0.00 m aft 1.00 m up, head 3.00 m aft 9.00 m up, clew 4.00 m aft 1.00 m up
  other jib, headsail on jib stay
    tack 0.00 m aft 1.00 m up, head 3.00 m aft 9.00 m up, clew 4.00 m aft 1.00 m up
`
  it('is ordered by the number, the list and the width that a sail says', async () => {
    const { value } = compiledText(text(', number 3 navy flax 24 in wide'))
    const { canvas } = await storesOf(value.rig, value.figures, { ...order, clothWidth: metres(0.9) }, solve)
    expect(
      canvas.map(({ list, number, width, sails }) => [list, number, Number(width.toFixed(6)), ...sails]),
    ).toEqual([
      ['navy flax', 3, 0.6096, 'Jib'],
      ['cotton duck', 4, 0.9, 'Other jib'],
    ])
    // 16 square metres and a tenth, of number 3: 38 lb a bolt of 38 yards by 24 inches.
    const [flax] = canvas
    expect(flax?.mass.known && flax.mass.value).toBeCloseTo(17.6 * 0.81374, 2)
  })

  it('is ordered for both of a pair of studdingsails', async () => {
    const { rig, figures } = compiledRig('ship-sorrel-wend').value
    const { canvas } = await storesOf(rig, figures, order, solve)
    const pairs = sum(
      rig.sails
        .filter(({ kind }) => kind === 'studdingsail')
        .map(({ name }) => {
          const area = figures.sails.get(name)?.area
          return area?.known ? area.value : Number.NaN
        }),
    )
    const plain = figures.total.known ? figures.total.value : Number.NaN
    expect(sum(canvas.map(one => one.area))).toBeCloseTo(plain + 2 * pairs, 6)
  })
})

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
