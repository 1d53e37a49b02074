import type { Found } from '../../findings/index.ts'
import { fitted, words } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { columnHead, rowHead, tagged } from '../tagged.ts'
import type { Book } from './book.ts'
import { editionParts, unsoundWords } from './edition.ts'
import { live, type PageBody } from './page.ts'
import { pageKey } from './page-key.ts'
import { level, pageTitle, paragraph, sectionHead, subtitle } from './page-parts.ts'
import { black, rule, type } from './type.ts'

/** A page of ruled lines, where a book needs one to come out even. */
export function notesPage(book: Book, count: number): PageBody {
  const title = 'Notes'
  const head = pageTitle(title, book.setting.ruler)
  const lines: Mark[] = []
  for (let y = 42; y <= live.textBottom; y += 8.5) lines.push(level(0, live.width, y, rule.tableRow))
  return {
    key: `notes ${count}`,
    title,
    section: title,
    description: 'Ruled lines for notes.',
    marks: [...head.marks, ...lines],
    bookmarks: [{ level: 1, title }],
  }
}

const columns = [0, 20, 48, 72] as const
const headings = ['Revision', 'Date', 'Digest', 'What changed, and who changed it'] as const

/** The last page: which edition this is, room to note the next ones, and whose work it rests on. */
export function revisionPages(book: Book): Found<readonly PageBody[]> {
  const { ruler } = book.setting
  const title = 'Revisions'
  const head = pageTitle(title, ruler)
  const under = subtitle(
    'A copy is good as long as its digest is that of the copy posted on board.',
    head.bottom + 6.6,
    ruler,
  )
  const table = revisionTable(book, under.bottom + 7)
  const rights = rightsSection(book, 152)
  return {
    value: [
      {
        key: pageKey.revisions,
        title,
        section: title,
        description: 'The edition of this handbook, with ruled rows for later ones; credits and rights.',
        marks: [...head.marks, ...under.marks, ...table, ...rights],
        bookmarks: [{ level: 1, title }],
      },
    ],
    findings: [],
  }
}

function revisionTable(book: Book, y: number): readonly Mark[] {
  const { ruler } = book.setting
  const { mark, date, digest } = editionParts(book)
  const head = headings.map((heading, at) =>
    columnHead([lettered(ruler, { x: columns[at] ?? 0, y: y + 4.4 }, heading, type.tableHead, black)]),
  )
  const values = [
    book.rig.vessel.revision?.mark ?? 'none',
    date ?? '',
    digest ?? 'none',
    unsoundWords(book) ?? '',
  ]
  const cells = values.map((value, at) => {
    const until = columns[at + 1] ?? live.width
    const fit = fitted(
      value,
      [type.register, { ...type.register, size: 8 }],
      until - (columns[at] ?? 0) - 2,
      ruler,
    )
    const text =
      value === '' ? [] : [lettered(ruler, { x: columns[at] ?? 0, y: y + 12.2 }, fit.words, fit.type, black)]
    return at === 0 ? rowHead(text, mark ? { actual: mark } : {}) : tagged('TD', text)
  })
  const rows = Array.from({ length: 10 }, (_, index) => y + 14.6 + index * 8)
  return [
    level(0, live.width, y, rule.table),
    level(0, live.width, y + 6.4, rule.frame),
    tagged('Table', [tagged('THead', [tagged('TR', head)]), tagged('TBody', [tagged('TR', cells)])]),
    ...rows.map(at => level(0, live.width, at, rule.tableRow)),
    level(0, live.width, (rows.at(-1) ?? y) + 8, rule.table),
  ]
}

function rightsSection(book: Book, y: number): readonly Mark[] {
  const { ruler } = book.setting
  const { rights, credits, name } = book.rig.vessel
  const head = sectionHead('Credits and rights', y, ruler)
  const told = [
    ...credits,
    rights ?? '',
    `Made from ${book.setting.imprint.from}, the rig of the ${name}.`,
  ].filter(line => line !== '')
  const marks: Mark[] = [...head.marks]
  let bottom = head.bottom
  for (const line of told) {
    const text = paragraph([words(line, type.note)], bottom + 5.4, ruler, { led: 4.1 })
    if (text.bottom > live.textBottom) break
    marks.push(...text.marks)
    bottom = text.bottom
  }
  return marks
}
