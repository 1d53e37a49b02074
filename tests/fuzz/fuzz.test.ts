import fc from 'fast-check'
import { expect, test, vi } from 'vitest'
import { mustHold, texts } from './properties.ts'

vi.setConfig({ testTimeout: 900_000 })

test.each([
  ['fragments', 20_000, 11],
  ['whole rigs', 500, 12],
] as const)(
  '%s at odds with the language, %i of them: findings with a place, and no fall',
  (kind, most, seed) => {
    let tried = 0
    const property = fc.property(texts[kind], text => {
      tried++
      mustHold(text)
    })
    fc.assert(property, { seed, numRuns: most })
    expect(tried).toBe(most)
  },
)
