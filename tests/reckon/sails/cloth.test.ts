import { describe, expect, test } from 'vitest'
import { canvasNames, canvasNumber, canvasWeight } from '../../../src/reckon/sails/index.ts'
import { compiledRig, exampleRigs } from '../../support/compiled.ts'

describe('canvas', () => {
  test('the worked example of the page', () => {
    const weight = canvasWeight('cotton duck', 4)
    expect(weight.known && weight.value * 63.5).toBeCloseTo(51.5, 1)
  })

  test('a higher number is never the heavier', () => {
    for (const canvas of canvasNames) {
      const weights = Array.from({ length: 12 }, (_, i) => canvasWeight(canvas, i + 1)).flatMap(weight =>
        weight.known ? [weight.value] : [],
      )
      expect(weights.length, canvas).toBeGreaterThan(0)
      expect(weights).toEqual(weights.toSorted((a, b) => b - a))
    }
  })

  test.each([
    ['cotton duk', 1, 'There is no canvas called "cotton duk". Nearest: cotton duck.'],
    ['cotton duck', 13, 'The weight of number 13 of cotton duck is not known.'],
    ['cotton duck', 0, 'The weight of number 0 of cotton duck is not known.'],
    ['merchant flax', 2, 'The weight of number 2 of merchant flax is not known.'],
  ])('%s, number %d, is not known', (canvas, number, because) => {
    expect(canvasWeight(canvas, number)).toEqual({ known: false, because })
  })
})

// New International Encyclopaedia, Canvas; W. H. Smyth, The Sailor's Word-Book, 1867.
test('courses and topsails are of numbers 1 to 3, jibs, topgallants and royals of lighter canvas', () => {
  const heavy = ['course', 'topsail', 'lower topsail', 'upper topsail', 'gaff sail']
  const light = ['headsail', 'staysail', 'topgallant', 'royal', 'skysail', 'gaff topsail']
  for (const name of exampleRigs) {
    for (const sail of compiledRig(name).value.rig.sails) {
      if (heavy.includes(sail.class)) expect(canvasNumber(sail), sail.name).toBeLessThanOrEqual(3)
      if (light.includes(sail.class)) expect(canvasNumber(sail), sail.name).toBeGreaterThan(3)
    }
  }
})
