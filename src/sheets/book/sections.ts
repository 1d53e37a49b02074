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

/** Pages that name no other page of their book, and so are laid out once for both rounds. */
export interface SettledSections {
  readonly before: Found<readonly PageBody[]>
  readonly orders: Found<readonly PageBody[]>
}

/** The pages between the cover and the glance, and those between the glance and the charts. */
export function settledSections(book: Book): SettledSections {
  return {
    before: together([howToUsePages(book), cautionPages(book)]),
    orders: together([
      answersPages(book),
      registerPages(book),
      ...spreadSails(book).map(sail => orderSpread(sail, book)),
      othersOrdersPages(book),
    ]),
  }
}

/** The pages of a book in the order of every book, before notes fill it up. */
export function bookSections(book: Book, { before, orders }: SettledSections): Found<readonly PageBody[]> {
  return together([
    coverPages(book),
    before,
    glancePages(book),
    orders,
    chartPages(book),
    indexPages(book),
    revisionPages(book),
  ])
}

function together(parts: readonly Found<readonly PageBody[]>[]): Found<readonly PageBody[]> {
  const findings: readonly Finding[] = parts.flatMap(part => part.findings)
  return { value: parts.flatMap(part => part.value), findings }
}
