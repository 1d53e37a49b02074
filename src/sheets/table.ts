/** A table: columns with headings and units, rows of values. Text from a rig stands in it as it is; the press escapes it. */
export interface Table {
  readonly id: string
  readonly title: string
  readonly columns: readonly Column[]
  readonly rows: readonly (readonly Cell[])[]
  /** What must be said beside it: conventions, cautions. */
  readonly notes: readonly string[]
}

export interface Column {
  readonly heading: string
  /** Of every number in it; empty for words and counts. */
  readonly unit: string
}

/** One value: words, a number in the column's unit with so many decimals, or that it is not known. */
export type Cell =
  | { readonly kind: 'words'; readonly words: string }
  | { readonly kind: 'number'; readonly value: number; readonly decimals: number }
  | { readonly kind: 'unknown'; readonly because: string }

export const words = (said: string): Cell => ({ kind: 'words', words: said })
export const nothing: Cell = words('')
