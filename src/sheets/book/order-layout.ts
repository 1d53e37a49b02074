import type { Book } from './book.ts'

/** Where things stand across a working order: a column for numerals, then two of 52 with 4 between. */
export const across = {
  text: 10,
  right: 118,
  gutter: 64,
  haul: { mark: 11.7, address: 14.7, name: 30, right: 61.4 },
  ease: { mark: 67.6, address: 70.5, name: 86, right: 118 },
  /** Lines under both columns, over the full width, in one row or in two columns. */
  under: { address: 30, name: 47, right: 118, second: 75 },
  block: { width: 17.6, height: 4.3 },
} as const

/** Distances down a working order, in millimetres. */
export interface Pace {
  /** From the rule above a phase to the baseline of its order. */
  readonly order: number
  /** From the order to the box of cautions. */
  readonly box: number
  /** From that to the first baseline of lines. */
  readonly lines: number
  /** From the columns to the lines under them, and from one group of those to the next. */
  readonly group: number
  /** To the row that says when it is done. */
  readonly done: number
  /** From there to the rule. */
  readonly close: number
}

/** The distances of a page with room, and of one that is full: the first fallback of a long order. */
export const paces = {
  roomy: { order: 5.5, box: 2, lines: 4.4, group: 5, done: 4.9, close: 1.7 },
  close: { order: 4.7, box: 1.5, lines: 3.8, group: 4.6, done: 4.5, close: 1.4 },
} as const satisfies Record<string, Pace>

/** How one page of an order is set. */
export interface OrderSetting {
  readonly book: Book
  /** The sail's name. */
  readonly sail: string
  readonly pace: Pace
  /** Like lines of one rail in one entry: the second fallback. */
  readonly isJoined: boolean
}
