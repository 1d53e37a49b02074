import type { Page } from '../../syntax/index.ts'
import { clause } from './clauses.ts'
import { finding, type Say } from './say.ts'

/** The editions of the language that this program reads. */
const editions: readonly number[] = [1]

/** Tells of texts written in an edition of the language that is not known here: what they say may mean something else. */
export function judgeEditions(pages: readonly Page[], say: Say): void {
  for (const page of pages) {
    const count = page.kind === 'edition' ? clause(page, 'count')?.count : undefined
    if (!count || editions.includes(count.value)) continue
    say(
      finding(
        'file/edition',
        count.span,
        `This text is written in edition ${count.written} of the language, and only edition ${editions.join(' and ')} is read here.`,
        {
          remedy: 'Use the program that came with that edition, or one after it.',
        },
      ),
    )
  }
}
