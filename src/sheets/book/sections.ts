import type { Finding, Found } from '../../findings/index.ts'
import { answersPages } from './answers.ts'
import type { Book } from './book.ts'
import { cautionPages } from './caution-page.ts'
import { chartPages } from './chart-pages.ts'
import { coverPages } from './cover-page.ts'
import { revisionPages } from './end-pages.ts'
import { glancePages } from './glance-page.ts'
import { howToUsePages } from './how-to-use.ts'
import { indexPages } from './index-pages.ts'
import { othersOrdersPages } from './others-orders.ts'
import type { PageBody } from './page.ts'
import { registerPages } from './register.ts'
import { spreadSails } from './station-sails.ts'
import { orderSpread } from './working-order.ts'

/** The pages of a book in the order of every book, before notes fill it up. */
export function bookSections(book: Book): Found<readonly PageBody[]> {
  return together([
    coverPages(book),
    howToUsePages(book),
    cautionPages(book),
    glancePages(book),
    answersPages(book),
    registerPages(book),
    ...spreadSails(book).map(sail => orderSpread(sail, book)),
    othersOrdersPages(book),
    chartPages(book),
    indexPages(book),
    revisionPages(book),
  ])
}

function together(parts: readonly Found<readonly PageBody[]>[]): Found<readonly PageBody[]> {
  const findings: readonly Finding[] = parts.flatMap(part => part.findings)
  return { value: parts.flatMap(part => part.value), findings }
}
