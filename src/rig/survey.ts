import type { Day } from './day.ts'

/** What a survey found of one line. */
export interface Survey {
  readonly day: Day
  /** Who looked at it, where the text says. */
  readonly by: string | undefined
  readonly condition: Condition
  readonly note: string | undefined
  /** When it is to be looked at again. */
  readonly due: Day | undefined
}

export type Condition = 'sound' | 'worn' | 'condemned'

export const conditions: readonly Condition[] = ['sound', 'worn', 'condemned']
