import type { Day, Vessel } from '../rig/index.ts'
import { unsoundWords as unsoundTitle } from './cartouche.ts'
import type { Imprint } from './imprint.ts'

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]

/** 'C, 25 November 2026': the edition of the rig a sheet shows; undefined where the text gives none. */
export function revisionWords({ revision }: Vessel): string | undefined {
  if (!revision) return undefined
  return `${revision.mark}, ${dateWords(revision)}`
}

/** 'C, 25 Nov. 2026': the same for a narrow column. */
export function revisionInShort({ revision }: Vessel): string | undefined {
  if (!revision) return undefined
  const { mark, day, month, year } = revision
  const name = months[month - 1] ?? ''
  return `${mark}, ${day} ${name.length > 4 ? `${name.slice(0, 3)}.` : name} ${year}`
}

/** '25 November 2026': the date of an edition. */
export const dateWords = ({ day, month, year }: Day): string => `${day} ${months[month - 1] ?? ''} ${year}`

/** 'from a rig with 3 errors': stands in place of the digest on a sheet of an unsound rig; undefined on a sound one. */
export function unsoundWords({ errors }: Imprint): string | undefined {
  return errors === 0 ? undefined : unsoundTitle(errors)
}
