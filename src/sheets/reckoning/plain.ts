import type { Figure } from '../../measure/index.ts'

/** A value of the record; numbers are SI, their unit in their name. */
export type Plain = string | number | boolean | readonly Plain[] | { readonly [name: string]: Plain }
export type ReckoningRecord = { readonly [name: string]: Plain }

export type Entries = Readonly<Record<string, Figure<Plain>>>

/** The known of the figures beside what is said, and the reasons of those that are not. */
export function record(said: ReckoningRecord, figures: Entries): ReckoningRecord {
  const told = Object.entries(figures).flatMap(([name, figure]) =>
    figure.known ? [[name, figure.value]] : [],
  )
  const reasons = Object.entries(figures).flatMap(([name, figure]) =>
    figure.known ? [] : [[name, figure.because]],
  )
  return {
    ...said,
    ...Object.fromEntries(told),
    ...(reasons.length > 0 ? { unknown: Object.fromEntries(reasons) } : {}),
  }
}
