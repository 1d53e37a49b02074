const months = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July'],
  ...['August', 'September', 'October', 'November', 'December'],
]

/** The number of a month, from 1, by its English name. */
export function monthOf(name: string): number | undefined {
  const found = months.findIndex(month => month.toLowerCase() === name.toLowerCase())
  return found < 0 ? undefined : found + 1
}

/** How many days a month has, from 1 for January, by the Gregorian calendar. */
export function daysIn(month: number, year: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28
  return [4, 6, 9, 11].includes(month) ? 30 : 31
}
