import { dateWords, unsoundWords as unsoundIn } from '../revision-words.ts'
import type { Book } from './book.ts'

/** Which edition of the rig a paper shows, as far as the text says: 'Revision C', '14 March 2027', '7f3a 91c2'. */
export interface EditionParts {
  readonly mark: string | undefined
  readonly date: string | undefined
  /** Undefined for an unsound rig: such a paper must not be taken for a verified one. */
  readonly digest: string | undefined
}

/** The parts of an edition, each undefined where the text is silent or the rig unsound. */
export function editionParts({ rig, setting }: Book): EditionParts {
  const { revision } = rig.vessel
  const { digest, errors } = setting.imprint
  return {
    mark: revision && `Revision ${revision.mark}`,
    date: revision && dateWords(revision),
    digest: errors === 0 ? digest.replace('-', ' ') : undefined,
  }
}

/** 'From a rig with 3 errors', or undefined for a sound rig. */
export function unsoundWords({ setting }: Book): string | undefined {
  const words = unsoundIn(setting.imprint)
  return words && words.charAt(0).toUpperCase() + words.slice(1)
}
