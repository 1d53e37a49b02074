/**
 * One figure of a published work beside what the program makes of it. It stands in the page beside the code, and is
 * a test of its own.
 */
export interface PublishedRow {
  /** What is said: 'Luff to advantage, 4 tons: pull'. */
  readonly fact: string
  /** Work, page. */
  readonly source: string
  /** How the work is known to us. What was read second-hand, or in a work not identified, never makes a rule firm. */
  readonly status: 'read' | 'second-hand' | 'work not identified' | 'from memory' | 'common practice'
  /** Computed by a method; tabled in our own words; or policy: a default, a limit or a warning, shown at work. */
  readonly kind: 'computed' | 'tabled' | 'policy'
  readonly published: number | string
  readonly computed: number | string
  readonly unit: string
  /** The greatest difference allowed: a share of the published figure, or an amount in its unit. Words must be equal. */
  readonly within: { readonly share: number } | { readonly amount: number }
}

/** A published figure that the program makes no use of, with the reason. It is not counted. */
export interface PassedOver {
  readonly fact: string
  readonly source: string
  readonly because: string
}

export interface Topic {
  readonly title: string
  readonly rows: readonly PublishedRow[]
  readonly passedOver: readonly PassedOver[]
}

/** Allows nothing but the rounding of arithmetic. */
export const exact = { share: 1e-9 }

/** Computed less published, as the page shows it; undefined for words. */
export function difference({ published, computed }: PublishedRow): number | undefined {
  if (typeof published !== 'number' || typeof computed !== 'number') return undefined
  return computed - published
}

/** Whether a row's figure is met. */
export function isMet(row: PublishedRow): boolean {
  const off = difference(row)
  if (off === undefined) return row.published === row.computed
  const allowed =
    'share' in row.within ? row.within.share * Math.abs(Number(row.published)) : row.within.amount
  return Math.abs(off) <= allowed
}

/** A row of a figure read in its source and computed, exact unless `rest` says otherwise. */
export const row = (
  fact: string,
  source: string,
  published: number | string,
  computed: number | string,
  unit: string,
  rest: Partial<PublishedRow> = {},
): PublishedRow => ({
  fact,
  source,
  status: 'read',
  kind: 'computed',
  published,
  computed,
  unit,
  within: exact,
  ...rest,
})
