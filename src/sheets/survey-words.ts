import type { Line } from '../rig/index.ts'
import { dateWords } from './revision-words.ts'

/** The last survey of a line: 'worn, “chafed at the truck”, 14 October 2026 by the bosun, due 1 April 2027'; empty for none. */
export function surveyWords({ survey }: Line): string {
  if (!survey) return ''
  const { condition, note, day, by, due } = survey
  return [
    condition,
    note && `“${note}”`,
    `${dateWords(day)}${by === undefined ? '' : ` by ${by}`}`,
    due && `due ${dateWords(due)}`,
  ]
    .filter(Boolean)
    .join(', ')
}

/** 'conjectural, by a sailor’s letter'; empty of what is recorded. */
export const conjectureWords = ({ conjectural, credited }: Line): string =>
  conjectural ? ['conjectural', credited && `by ${credited}`].filter(Boolean).join(', ') : ''
