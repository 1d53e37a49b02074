import { type Figure, known, unknown } from '../../measure/index.ts'
import type { Purchase, Rove } from '../../rig/index.ts'

/** Sheaves of a block by its name. */
const sheavesOf: ReadonlyMap<string, number> = new Map([
  ['single', 1],
  ['double', 2],
  ['treble', 3],
  ['fourfold', 4],
  ['fivefold', 5],
])

/** A purchase by its two blocks, as ['double', 'single']; the standing part is fast to the one with fewer sheaves. */
export function purchaseOfBlocks(blocks: readonly string[], rove: Rove): Figure<Purchase> {
  const counts = blocks.map(name => sheavesOf.get(name))
  const [one, other, ...more] = counts
  const strange = blocks.find(name => !sheavesOf.has(name))
  if (strange !== undefined)
    return unknown(`There is no block called "${strange}": say ${[...sheavesOf.keys()].join(', ')}.`)
  if (one === undefined || other === undefined || more.length > 0)
    return unknown('A purchase is rove through two blocks.')
  if (Math.abs(one - other) > 1)
    return unknown(
      `A ${blocks[0]} and a ${blocks[1]} block can't be rove together: one has ${Math.abs(one - other)} sheaves more than the other.`,
    )
  const sheaves = one + other
  return known({
    name: `${blocks.join(' and ')} ${rove}`,
    sheaves,
    advantage: rove === 'to advantage' ? sheaves + 1 : sheaves,
  })
}
