import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { newtons } from '../../../src/measure/index.ts'
import {
  capstan,
  type FrictionModel,
  handsAt,
  handsFor,
  holdingRatio,
  pullRatio,
  purchaseOfBlocks,
  tackleOf,
} from '../../../src/reckon/tackle/index.ts'
import { purchaseNames } from '../../../src/rig/index.ts'

const tackle = (...purchase: readonly string[]) => {
  const found = tackleOf(purchase)
  if (!found.known) throw new Error(found.because)
  return found.value
}
/** Those whose parts are in series: compounding friction is worked for them. */
const inSeries = purchaseNames.filter(name => !/burton|whip upon whip/.test(name))
const models: readonly FrictionModel[] = ['on the load', 'off the lift', 'compounding']

describe('a purchase that makes no sense says why', () => {
  test.each([
    [[], 'No purchase is said.'],
    [['lufff'], 'There is no purchase called "lufff". Nearest: luff.'],
    [['constructor'], 'There is no purchase called "constructor".'],
    [['runner to advantage'], 'A runner is rove in one way only.'],
  ])('%j', (purchase, because) => {
    expect(tackleOf(purchase)).toEqual({ known: false, because })
  })

  test.each([
    [['treble', 'single'], /can't be rove together: one has 2 sheaves more/],
    [['double'], /through two blocks/],
    [['double', 'single', 'single'], /through two blocks/],
    [['double', 'sixfold'], /no block called "sixfold"/],
  ])('blocks %j', (blocks, because) => {
    const purchase = purchaseOfBlocks(blocks, 'to disadvantage')
    expect(purchase.known ? '' : purchase.because).toMatch(because)
  })

  test('sheaves that eat the whole lift', () => {
    expect(pullRatio(tackle('fivefold'), 0, { model: 'off the lift', share: 0.1 }).known).toBe(false)
  })

  test('a burton under compounding friction', () => {
    const ratio = pullRatio(tackle('double spanish burton'), 0, { model: 'compounding', share: 0.1 })
    expect(ratio).toEqual({
      known: false,
      because: 'Compounding friction is not worked for a double spanish burton.',
    })
  })

  test('hands that pull nothing', () => {
    expect(handsFor(newtons(100), { hand: newtons(0), loss: 0 }).known).toBe(false)
    expect(handsFor(newtons(100), { hand: newtons(225), loss: 1 }).known).toBe(false)
  })
})

describe('what holds of every purchase', () => {
  const purchase = fc.constantFrom(...inSeries)
  const share = fc.double({ min: 0.001, max: 0.05, noNaN: true })
  const leads = fc.integer({ min: 0, max: 4 })

  test('without friction the pull is the load over the advantage, by every model', () => {
    for (const name of inSeries)
      for (const model of models) {
        const ratio = pullRatio(tackle(name), 2, { model, share: 1e-12 })
        expect(ratio.known && ratio.value * tackle(name).advantage).toBeCloseTo(1, 9)
      }
  })

  test('friction only ever adds to the pull, and a lead adds more', () => {
    fc.assert(
      fc.property(purchase, share, leads, (name, share, leads) => {
        for (const model of models) {
          const [less, more] = [leads, leads + 1].map(n => pullRatio(tackle(name), n, { model, share }))
          if (!less?.known || !more?.known) throw new Error('not known')
          expect(less.value * tackle(name).advantage).toBeGreaterThanOrEqual(1)
          expect(more.value).toBeGreaterThan(less.value)
        }
      }),
    )
  })

  test('what holds a load is never more than what hauls it', () => {
    fc.assert(
      fc.property(purchase, share, leads, (name, share, leads) => {
        const friction = { model: 'on the load', share } as const
        const hauled = pullRatio(tackle(name), leads, friction)
        expect(holdingRatio(tackle(name), leads, friction)).toBeLessThanOrEqual(
          hauled.known ? hauled.value : Number.NaN,
        )
      }),
    )
  })

  test('powers of one tackle upon another multiply, sheaves add', () => {
    fc.assert(
      fc.property(purchase, purchase, (one, other) => {
        const [first, second, both] = [tackle(one), tackle(other), tackle(one, other)]
        expect(both.advantage).toBe(first.advantage * second.advantage)
        expect(both.sheaves).toBe(first.sheaves + second.sheaves)
      }),
    )
  })
})

describe('hands', () => {
  test('just so many hands ask for no other', () => {
    expect(handsFor(newtons(675), { hand: newtons(225), loss: 0 })).toEqual({ known: true, value: 3 })
    expect(handsFor(newtons(676), { hand: newtons(225), loss: 0 })).toEqual({ known: true, value: 4 })
  })

  test('a loss counts beyond the fourth hand only', () => {
    const party = { hand: newtons(225), loss: 0.25 }
    expect(handsFor(newtons(900), party)).toEqual({ known: true, value: 4 })
    // Ten hands' pull: four whole, and six over three quarters each.
    expect(handsFor(newtons(2250), party)).toEqual({ known: true, value: 12 })
  })

  test('a capstan takes fewer, and has room for so many only', () => {
    expect(handsAt(capstan, newtons(8_000), newtons(225))).toEqual({ known: true, value: 6 })
    expect(handsAt(capstan, newtons(20_000), newtons(225))).toEqual({
      known: false,
      because: 'It takes 14 hands, and there is room for 8.',
    })
  })
})
