import type { Day } from '../rig/index.ts'

const months = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July'],
  ...['August', 'September', 'October', 'November', 'December'],
]

/** '14 October 2026'. */
export const shownDay = ({ day, month, year }: Day): string => `${day} ${months[month - 1]} ${year}`
