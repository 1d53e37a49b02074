/** One tackle, as rove: the sheaves it turns over, and the metres of fall for a metre of the load's travel. */
export interface Purchase {
  readonly name: string
  readonly sheaves: number
  readonly advantage: number
}

/** A tackle whose hauling part leaves the fixed block; led from the moving block it gains one. */
const tackle = (sheaves: number): Omit<Purchase, 'name'> => ({ sheaves, advantage: sheaves })
/** What stands aloft of a tackle and gains nothing. */
const plain = (sheaves: number): Omit<Purchase, 'name'> => ({ sheaves, advantage: 1 })

/**
 * The purchases by name, rove to disadvantage: Capt. J. N. Jutsum, Knots, Bends, Splices, Glasgow 1914, pp. 49 to 54;
 * Nicholls's Seamanship and Nautical Knowledge, pp. 40 to 48 (two- to five-fold); A. B. Dyer, Handbook for Light
 * Artillery, p. 318 (whip upon whip). Wire, chain and pendant, and the names for a luff: common practice.
 */
const purchases: ReadonlyMap<string, Omit<Purchase, 'name'>> = new Map([
  ['single', plain(0)],
  ['wire', plain(0)],
  ['chain', plain(0)],
  ['pendant', plain(0)],
  ['tye', plain(1)],
  ['whip', plain(1)],
  ['runner', { sheaves: 1, advantage: 2 }],
  ['double', tackle(2)],
  ['double whip', tackle(2)],
  ['gun', tackle(2)],
  ['luff', tackle(3)],
  ['watch', tackle(3)],
  ['handy billy', tackle(3)],
  ['jigger', tackle(3)],
  ['twofold', tackle(4)],
  ['double luff', tackle(4)],
  ['gyn', tackle(5)],
  ['threefold', tackle(6)],
  ['fourfold', tackle(8)],
  ['fivefold', tackle(10)],
  ['whip upon whip', { sheaves: 2, advantage: 4 }],
  ['single spanish burton', { sheaves: 2, advantage: 3 }],
  ['double spanish burton', { sheaves: 3, advantage: 5 }],
])

/** Names of all purchases a line may be rove with. */
export const purchaseNames: readonly string[] = [...purchases.keys()]

/** Which block of a tackle the hauling part leaves; only tackles of two blocks can be rove either way. */
export type Rove = 'to advantage' | 'to disadvantage'

/** A purchase by its name: 'luff', 'luff to advantage'. Undefined where there is none of that name, or it has no such way. */
export function purchaseOf(said: string): Purchase | undefined {
  const [, name = said, rove] = /^(.*?)(?: (to (?:dis)?advantage))?$/.exec(said) ?? []
  const found = purchases.get(name)
  if (!found || (rove && found.sheaves !== found.advantage)) return undefined
  return { name: said, ...found, advantage: found.advantage + (rove === 'to advantage' ? 1 : 0) }
}

/** Velocity ratio of tackles one upon another: a runner and luff is 2 x 3. Undefined where one is unknown or none is said. */
export function velocityRatio(purchase: readonly string[]): number | undefined {
  if (purchase.length === 0) return undefined
  let product = 1
  for (const name of purchase) {
    const found = purchaseOf(name)
    if (!found) return undefined
    product *= found.advantage
  }
  return product
}

/** What goes aloft above a tackle, where one stands at its foot: a tye, a wire or a chain. */
export const aboveTackle = (purchase: readonly string[]): string | undefined =>
  purchase.find(name => name === 'tye' || name === 'wire' || name === 'chain')
