/** The first of what is alike on both sides, and whether there is more of it. */
export interface OnceAPair<T> {
  readonly first: T
  readonly isTwice: boolean
}

/** What fares alike is told once: the first of each key, in their order. */
export function onceAPair<T>(all: readonly T[], key: (one: T) => string): readonly OnceAPair<T>[] {
  const counts = new Map<string, { readonly first: T; count: number }>()
  for (const one of all) {
    const found = counts.get(key(one))
    if (found) found.count++
    else counts.set(key(one), { first: one, count: 1 })
  }
  return [...counts.values()].map(({ first, count }) => ({ first, isTwice: count > 1 }))
}
