/** Numbers from 0 to below 1 that look random and are the same every time: the generator "mulberry32". */
export function seeded(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

/** So many of a list, chosen without order or repetition. */
export function someOf<T>(list: readonly T[], most: number, random: () => number): readonly T[] {
  const left = [...list]
  return Array.from({ length: Math.min(most, left.length) }, () => {
    const [chosen] = left.splice(Math.floor(random() * left.length), 1)
    return chosen as T
  })
}
