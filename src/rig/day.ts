/** A day of the calendar, as the text says it. */
export interface Day {
  readonly year: number
  readonly month: number
  readonly day: number
}

/** Whether one day comes before another. */
export const isBefore = (a: Day, b: Day): boolean =>
  a.year - b.year < 0 ||
  (a.year === b.year && (a.month - b.month < 0 || (a.month === b.month && a.day < b.day)))
