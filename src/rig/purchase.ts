/** Metres of fall for a metre of travel, by the name of the tackle, as usually rove (Nicholls, Seamanship; common practice for wire, tye and pendant, which give no advantage). */
const ratios: Readonly<Record<string, number>> = {
  single: 1,
  tye: 1,
  wire: 1,
  chain: 1,
  pendant: 1,
  whip: 1,
  double: 2,
  'double whip': 2,
  runner: 2,
  gun: 2,
  luff: 3,
  watch: 3,
  'handy billy': 3,
  jigger: 3,
  twofold: 4,
  threefold: 6,
}

/** Names of all purchases a line may be rove with. */
export const purchaseNames: readonly string[] = Object.keys(ratios)

/** Velocity ratio of tackles one upon another: a runner and luff is 2 x 3. Undefined where one is unknown or none is said. */
export function velocityRatio(purchase: readonly string[]): number | undefined {
  if (purchase.length === 0) return undefined
  let product = 1
  for (const name of purchase) {
    const ratio = ratios[name]
    if (ratio === undefined || !Object.hasOwn(ratios, name)) return undefined
    product *= ratio
  }
  return product
}

/**
 * Parts of rope on the last stretch of the lead. Where a tye or a wire goes aloft the tackle stands below it, so
 * that stretch is single.
 */
export function partsAtEnd(purchase: readonly string[]): number {
  const tackleBelow = purchase.some(name => name === 'tye' || name === 'wire' || name === 'chain')
  return tackleBelow ? 1 : (velocityRatio(purchase) ?? 1)
}
