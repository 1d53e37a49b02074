/** Something that wants to stand with its middle at a height and takes so much room. */
export interface Wanting {
  readonly wants: number
  readonly height: number
}

/**
 * The upper edges of things that keep their order, stand at least `gap` apart between `from` and `to`, and lie
 * as near to where they want as that allows (least squares: isotonic regression by pooling neighbours that
 * disagree, then held within the bounds). Undefined where they do not fit.
 */
export function spaced(
  things: readonly Wanting[],
  gap: number,
  { from, to }: { readonly from: number; readonly to: number },
): readonly number[] | undefined {
  const before = runningRoom(things, gap)
  const whole = things.reduce((sum, { height }) => sum + height, 0) + gap * Math.max(0, things.length - 1)
  if (whole > to - from + 1e-9) return undefined
  // Less the room of all before it, what is left of each wish must only never decrease.
  const wishes = things.map(({ wants, height }, index) => wants - height / 2 - (before[index] ?? 0))
  return pooled(wishes).map(
    (slack, index) => Math.min(Math.max(slack, from), to - whole) + (before[index] ?? 0),
  )
}

function runningRoom(things: readonly Wanting[], gap: number): readonly number[] {
  let room = 0
  return things.map(({ height }) => {
    const before = room
    room += height + gap
    return before
  })
}

function pooled(wishes: readonly number[]): readonly number[] {
  const pools: { sum: number; count: number }[] = []
  for (const wish of wishes) {
    let pool = { sum: wish, count: 1 }
    for (
      let last = pools.at(-1);
      last && last.sum / last.count > pool.sum / pool.count;
      last = pools.at(-1)
    ) {
      pools.pop()
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count }
    }
    pools.push(pool)
  }
  return pools.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count))
}
