import type { Found } from '../../findings/index.ts'
import type { Mark } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import type { Ruler } from '../typeface.ts'
import type { Book } from './book.ts'
import { type Column, type Entry, inColumns } from './index-columns.ts'
import { nameEntries, pinEntries } from './index-entries.ts'
import { live, type PageBody } from './page.ts'
import { pageKey } from './page-key.ts'
import { continuedTitle, pageTitle, sectionHead } from './page-parts.ts'

/** The index by name and by pin: the table equal to every chart of the book. */
export function indexPages(book: Book): Found<readonly PageBody[]> {
  const tables: readonly (readonly [string, readonly Entry[]])[] = [
    ['By name', nameEntries(book)],
    ['By pin', pinEntries(book)],
  ]
  const columns =
    oneEach(tables) ?? tables.flatMap(([heading, entries]) => inColumns(heading, entries, halves, room))
  const pages: PageBody[] = []
  for (let at = 0; at < columns.length; at += 2)
    pages.push(indexPage(columns.slice(at, at + 2), pages.length, book))
  return { value: pages, findings: [] }
}

const room = { first: 42.8, last: 194 } as const
const headAt = 36.6

// Names need more room than pins; where each table is a column by itself, they have it.
const unequal = [58, 56.2] as const
const halves = 57.1

function oneEach(tables: readonly (readonly [string, readonly Entry[]])[]): readonly Column[] | undefined {
  const columns = tables.map(([heading, entries], index) =>
    inColumns(heading, entries, unequal[index] ?? halves, room),
  )
  return columns.every(some => some.length <= 1) ? columns.flat() : undefined
}

function indexPage(columns: readonly Column[], index: number, book: Book): PageBody {
  const { ruler } = book.setting
  const head = index === 0 ? pageTitle('Index', ruler) : continuedTitle('Index', ruler)
  const marks = columns.flatMap((column, at) =>
    columnMarks(column, at === 0 ? 0 : live.width - column.width, ruler),
  )
  return {
    key: index === 0 ? pageKey.index : `${pageKey.index} ${index + 1}`,
    title: 'Index',
    section: 'Index',
    description:
      'The lines of the station by name, with pin and page, and the pins of its rails with their lines.',
    marks: [...head.marks, ...marks],
    bookmarks: index === 0 ? [{ level: 1, title: 'Index' }] : [],
  }
}

function columnMarks({ heading, isFirst, entries, width }: Column, x: number, ruler: Ruler): readonly Mark[] {
  const head = sectionHead(isFirst ? heading : `${heading}, continued`, headAt, ruler, { x, width })
  const rows = entries.map(({ entry, y }) => entry.draw(x, y, width))
  const table = tagged('Table', [tagged('TBody', rows, { key: `${heading} rows` })], { key: heading })
  return [...(isFirst ? head.marks : [tagged('Artifact', head.marks)]), table]
}
