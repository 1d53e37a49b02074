/** A figure that is either known, or says why it is not: never NaN, null or zero for "can't tell". */
export type Figure<Q> =
  | { readonly known: true; readonly value: Q }
  | { readonly known: false; readonly because: string }

export const known = <Q>(value: Q): Figure<Q> => ({ known: true, value })
export const unknown = (because: string): Figure<never> => ({ known: false, because })

/** A figure worked from others: unknown for the reason of the first of them that is. */
export function workedFrom<Qs extends readonly unknown[], R>(
  figures: { readonly [K in keyof Qs]: Figure<Qs[K]> },
  work: (...values: Qs) => R,
): Figure<R> {
  const values: unknown[] = []
  for (const figure of figures) {
    if (!figure.known) return figure
    values.push(figure.value)
  }
  return known(work(...(values as unknown as Qs)))
}

/** What a figure leads on to, where it is known; that may be unknown for a reason of its own. */
export const onceKnown = <Q, R>(figure: Figure<Q>, next: (value: Q) => Figure<R>): Figure<R> =>
  figure.known ? next(figure.value) : figure
