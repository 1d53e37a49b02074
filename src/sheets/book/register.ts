import type { Found } from '../../findings/index.ts'
import type { Mark } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import type { Book } from './book.ts'
import { live, type PageBody } from './page.ts'
import { lineKey, pageKey } from './page-key.ts'
import { continuedTitle, pageTitle, subtitle } from './page-parts.ts'
import { type RegisterSection, registerSections } from './register-rows.ts'
import { type Measured, measuredRow, sectionHeight, sectionMarks, tableHead } from './register-table.ts'

const title = 'Line register'

/**
 * The register of a station's lines: where each is made fast, what hauling it does, what is eased with it, hands
 * and rope. No row is broken over pages, no heading stands without two rows under it, and every page has the
 * table's head again.
 */
export function registerPages(book: Book): Found<readonly PageBody[]> {
  const sections = registerSections(book)
  if (sections.length === 0) return { value: [], findings: [] }
  const pages = parted(sections.map(section => measured(section, book)))
  return { value: pages.map((parts, index) => registerPage(parts, index, book)), findings: [] }
}

interface Part {
  readonly section: RegisterSection
  /** Whether its heading has stood on the page before. */
  readonly goesOn: boolean
  readonly rows: readonly Measured[]
}

const measured = (section: RegisterSection, book: Book): Part => ({
  section,
  goesOn: false,
  rows: section.rows.map(row => measuredRow(row, book)),
})

const tops = { first: 37.4, later: 27.4, head: 4.9 } as const
const betweenSections = 3.1
const fewestRows = 2

/** Sections on pages: kept whole where a page can hold them and little room is lost, else broken between rows. */
function parted(sections: readonly Part[]): readonly (readonly Part[])[] {
  const pages: Part[][] = [[]]
  let left: number = live.textBottom - tops.first - tops.head
  const whole = live.textBottom - tops.later - tops.head
  const turn = () => {
    pages.push([])
    left = whole
  }
  const set = (part: Part) => {
    pages.at(-1)?.push(part)
    left -= heightOf(part.rows) + sectionHeight + betweenSections
  }
  for (const section of sections) {
    let rest = section
    while (rest.rows.length > 0) {
      const page = pages.at(-1)
      const isFresh = page === undefined || page.length === 0
      const fits = rowsThatFit(rest.rows, left - sectionHeight)
      const fitsWhole = fits === rest.rows.length
      const staysWhole = heightOf(rest.rows) + sectionHeight <= whole && left < whole * worthBreaking
      if (!isFresh && !fitsWhole && (fits < fewestRows || staysWhole)) {
        turn()
        continue
      }
      const taken = Math.max(1, leavingTwo(fits, rest.rows.length))
      set({ ...rest, rows: rest.rows.slice(0, taken) })
      rest = { ...rest, goesOn: true, rows: rest.rows.slice(taken) }
      if (rest.rows.length > 0) turn()
    }
  }
  return pages.filter(page => page.length > 0)
}

// With less than this share of a page left, a section that fits the next page whole begins there.
const worthBreaking = 0.45

const leavingTwo = (fits: number, all: number): number =>
  all - fits > 0 && all - fits < fewestRows && fits > fewestRows ? all - fewestRows : fits

const heightOf = (rows: readonly Measured[]): number => rows.reduce((total, { height }) => total + height, 0)

function rowsThatFit(rows: readonly Measured[], room: number): number {
  let height = 0
  const tooMany = rows.findIndex(row => {
    height += row.height
    return height > room
  })
  return tooMany < 0 ? rows.length : tooMany
}

function registerPage(parts: readonly Part[], index: number, book: Book): PageBody {
  const { ruler } = book.setting
  const isFirst = index === 0
  const heading = isFirst
    ? [
        ...pageTitle(title, ruler).marks,
        ...subtitle('Lowest sail first. Lines in italics are worked by the station named.', 33.9, ruler)
          .marks,
      ]
    : continuedTitle(title, ruler).marks
  const top = isFirst ? tops.first : tops.later
  const head = tableHead(top, isFirst, book)
  const rows: Mark[] = []
  let y = top + tops.head
  for (const part of parts) {
    const name = part.goesOn ? `${part.section.heading}, continued` : part.section.heading
    rows.push(...sectionMarks(name, part.section.note, y, book))
    y += sectionHeight
    for (const row of part.rows) {
      rows.push(...row.draw(y))
      y += row.height
    }
    y += betweenSections
  }
  return {
    key: isFirst ? pageKey.register : `${pageKey.register} ${index + 1}`,
    title,
    section: title,
    description: `${title}: ${parts.map(({ section }) => section.heading).join(', ')}. Where each line is made fast, what hauling it does, what is eased with it, hands and rope.`,
    marks: [
      ...heading,
      ...head.outside,
      tagged('Table', [...head.inside, ...rows], { key: 'line register' }),
    ],
    bookmarks: isFirst ? [{ level: 1, title }] : [],
    alsoHolds: [...new Set(parts.flatMap(({ rows: some }) => some.map(({ row }) => lineKey(row.pairKey))))],
  }
}
