/** Reckoned when it is first asked for, and kept: a check that needs no loads pays for none. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined
  return () => {
    made ??= { value: make() }
    return made.value
  }
}
