import type { Finding } from '../findings/index.ts'
import { listed } from './naming.ts'
import type { Draft } from './rule.ts'

/** What a finding on much that is wanting explains: the text is still being written or half lost, and figures of the whole ship follow. */
export const unfinished = 'what is still to be written'

/** Of more the rest is named, a small craft's whole list, and the places are shown of a few. */
const mostNamed = 30
const mostShown = 8

interface Many {
  /** So many are slips, and told one by one. */
  readonly slips: number
  /** What each draft is of, as a list names it. */
  readonly nameOf: (draft: Draft) => string
  /** What begins the list of the others: 'Nor are 12 other lines'. */
  readonly nor: (others: readonly Draft[]) => string
  /** What to do about all of them, where it is not what to do about one. */
  readonly remedy?: string
}

/** The findings of one want or, where there are many, one of them all: at the first, with the places of the others beside it. */
export function manyAsOne(drafts: readonly Draft[], { slips, nameOf, nor, remedy }: Many): readonly Draft[] {
  const [first, ...others] = drafts
  if (!first || drafts.length <= slips) return drafts
  const named = others.slice(0, mostNamed)
  const names = [...new Set(named.map(nameOf))]
  const list = others.length > mostNamed ? `${names.join(', ')} ...` : `${listed(names)}.`
  return [
    {
      ...first,
      ...(remedy ? { remedy } : {}),
      message: `${first.message} ${nor(others)}: ${list}`,
      related: [
        ...(first.related ?? []),
        ...(others.length > mostShown
          ? []
          : others.flatMap((one, index) => placeOf(one, drafts.slice(0, index + 1), nameOf))),
      ],
      about: drafts.flatMap(draft => draft.about),
      explains: [...drafts.flatMap(draft => draft.explains ?? []), unfinished],
    },
  ]
}

/** Where one more is said, unless that has been shown. */
function placeOf(draft: Draft, before: readonly Draft[], nameOf: Many['nameOf']): Finding['related'] {
  const { source, start } = draft.at
  if (before.some(({ at }) => at.source === source && at.start === start)) return []
  return [{ at: draft.at, message: `the ${nameOf(draft)} is said here` }]
}
