import type { Book } from './book.ts'
import { leading, points } from './type.ts'

/** Where things stand across a working order: a column for numerals, then two of 52 with 4 between. */
export const across = {
  text: 10,
  right: 118,
  gutter: 64,
  haul: { mark: 11.7, address: 14.7, name: 30, right: 61.4 },
  ease: { mark: 67.6, address: 70.5, name: 86, right: 118, remark: 67 },
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
  /** From the upper edge of the box to its first baseline. */
  readonly boxed: number
  /** From its lower edge to the first baseline of lines. */
  readonly lines: number
  /** From the order to that, where no box stands between. */
  readonly bare: number
  /** From the columns to the lines under them, and from one group of those to the next. */
  readonly group: number
  /** To the row that says when it is done. */
  readonly done: number
  /** From there to the rule. */
  readonly close: number
  /** Above and below the key for both tacks. */
  readonly key: number
  /** The baseline of the title. */
  readonly title: number
  /** From one baseline of working lines to the next. */
  readonly leading: number
}

const roomy: Pace = {
  order: 5.5,
  box: 2,
  boxed: 3.45,
  lines: 4.4,
  bare: 4.9,
  group: 5,
  done: 4.9,
  close: 1.7,
  key: 2.6,
  title: 25.6,
  leading: leading.working,
}

const closest: Pace = {
  order: 4.6,
  box: 1.4,
  boxed: 3.3,
  lines: 3.7,
  bare: 4.4,
  group: 4.5,
  done: 4.4,
  close: 1.35,
  key: 2,
  title: 25.6,
  leading: leading.working,
}

// For pages that take all there is: the lines closer too, though no smaller.
const dense: Pace = {
  order: 4.6,
  box: 1.1,
  boxed: 3.1,
  lines: 3.5,
  bare: 4.3,
  group: 4.2,
  done: 4,
  close: 1.1,
  key: 1.8,
  title: 23.2,
  leading: points(11),
}

/** From a page with room to a close one: a page is set in the first that holds it. */
export const paces: readonly [Pace, ...Pace[]] = [roomy, ...steps(5, roomy, closest)]

/** The same, and on to the closest that can still be read. */
export const condensedPaces: readonly Pace[] = [...paces, ...steps(4, closest, dense)]

function steps(count: number, from: Pace, to: Pace): readonly Pace[] {
  return Array.from({ length: count }, (_, step) => between(from, to, (step + 1) / count))
}

function between(from: Pace, to: Pace, share: number): Pace {
  const mix = (name: keyof Pace) => from[name] + (to[name] - from[name]) * share
  return {
    order: mix('order'),
    box: mix('box'),
    boxed: mix('boxed'),
    lines: mix('lines'),
    bare: mix('bare'),
    group: mix('group'),
    done: mix('done'),
    close: mix('close'),
    key: mix('key'),
    title: mix('title'),
    leading: mix('leading'),
  }
}

/** How one page of an order is set. */
export interface OrderSetting {
  readonly book: Book
  /** The sail's name. */
  readonly sail: string
  readonly pace: Pace
  /** How the cautions of a phase are worded: short, or brief where a page is full. */
  readonly cautions: 'short' | 'brief'
  /** Like lines of one rail in one entry. */
  readonly isJoined: boolean
  /**
   * On a page that takes all there is: cautions stand on the order's own line where there is room, and one that
   * the page has told before by its sign and number; who works which lines is left to the lines themselves.
   */
  readonly isCondensed: boolean
  /** How many lines a sentence of the text may take. */
  readonly mostLines: number
}
