import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { metres } from '../../../src/measure/index.ts'
import { fewestCoils, type Solve, solve } from '../../../src/reckon/stores/index.ts'

const cut = (lengths: readonly number[], coil: number, by: Solve = solve) =>
  fewestCoils(lengths.map(metres), metres(coil), by)

/** The fewest coils, by trying every piece in every coil. */
function byTrial(lengths: readonly number[], coil: number): number {
  const left: number[] = []
  let best = lengths.length
  const lay = (at: number): void => {
    if (left.length >= best) return
    const piece = lengths[at]
    if (piece === undefined) {
      best = left.length
      return
    }
    for (let i = 0; i < left.length; i++) {
      if ((left[i] ?? 0) < piece) continue
      left[i] = (left[i] ?? 0) - piece
      lay(at + 1)
      left[i] = (left[i] ?? 0) + piece
    }
    left.push(coil - piece)
    lay(at + 1)
    left.pop()
  }
  lay(0)
  return best
}

describe('coil cuts', () => {
  it('are as few as any trial finds, lose no piece, and prove it', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 5, max: 100 }), { minLength: 1, maxLength: 9 }),
        async lengths => {
          const { coils, atLeast } = await cut(lengths, 100)
          expect(coils.length).toBe(byTrial(lengths, 100))
          expect(atLeast).toBe(coils.length)
          expect(coils.flat().sort()).toEqual(lengths.map(metres).sort())
          for (const pieces of coils)
            expect(pieces.reduce((sum, piece) => sum + piece, 0)).toBeLessThanOrEqual(100)
        },
      ),
      { seed: 5, numRuns: 200 },
    )
  })

  it('find what laying the longest first does not', async () => {
    // Longest first needs three coils of ten metres: 6, 4 fill the first only where the 5s go together.
    const lengths = [4, 4, 4, 4, 3, 3, 3, 3, 3, 3]
    const { coils, atLeast } = await cut(lengths, 17)
    expect([coils.length, atLeast]).toEqual([2, 2])
  })

  it('print the bound where nothing is solved', async () => {
    const giveUp: Solve = async () => ({ values: new Map(), bound: 0 })
    const { coils, atLeast } = await cut([51, 51, 51], 100, giveUp)
    expect([coils.length, atLeast]).toEqual([3, 2])
  })

  it('of nothing are none', async () => {
    expect(await cut([], 220)).toEqual({ coils: [], atLeast: 0 })
  })
})
