import type { Finding, Found } from '../../findings/index.ts'
import type { Station } from '../../rig/index.ts'
import type { Setting } from '../setting.ts'
import type { PaperDocument } from '../sheet.ts'
import type { Book } from './book.ts'
import { bound } from './bound.ts'
import { notesPage } from './end-pages.ts'
import { leafOf, outlineOf, type PageBody } from './page.ts'
import { bookSections, settledSections } from './sections.ts'
import { stationLines } from './station-lines.ts'
import { stationStem } from './station-stem.ts'

/**
 * A station's handbook, page by page as it is read: A5, or half a Letter sheet, with as many pages as a
 * saddle-stitched book can have. Its text is all from the rig; what had to give way to fit is a finding.
 */
export function stationHandbook(
  { rig, figures, evolutions }: Pick<Book, 'rig' | 'figures' | 'evolutions'>,
  station: Station,
  setting: Setting,
): Found<PaperDocument> {
  const lines = stationLines(rig, station)
  const unnumbered = { pageOf: () => undefined, pageCount: undefined }
  const blind: Book = { rig, figures, evolutions, station, setting, lines, ...unnumbered }
  const settled = settledSections(blind)
  const draft = inOrder(bookSections(blind, settled).value, blind)
  const numbers = pageNumbers(draft)
  const book: Book = { ...blind, pageOf: key => numbers.get(key), pageCount: draft.length }
  const sections = bookSections(book, settled)
  const pages = inOrder(sections.value, book)
  const findings = [...sections.findings, ...lackingGlyphs(book), ...tooThick(pages.length, book)]
  return {
    value: {
      id: `handbook-${stationStem(station, rig)}`,
      title: `${rig.vessel.name}: ${station.label}, station handbook`,
      language: 'en',
      subject: `The lines, pins and orders of the ${station.name}`,
      pages: pages.map((page, index) => bound(page, index + 1, pages.length, book)),
      pageLabels: undefined,
      outline: outlineOf(pages),
      date: rig.vessel.revision && dateOf(rig.vessel.revision),
    },
    findings,
  }
}

const dateOf = ({ year, month, day }: { year: number; month: number; day: number }) => ({ year, month, day })

// Pages that must stand on one side of the fold get a page for notes before them where they would not, and the
// last page is the back of the book: notes fill it up to a multiple of four.
function inOrder(sections: readonly PageBody[], book: Book): readonly PageBody[] {
  const pages: PageBody[] = []
  let notes = 0
  const note = () => {
    notes += 1
    pages.push(notesPage(book, notes))
  }
  for (const [index, section] of sections.entries()) {
    if (section.leaf !== undefined && leafOf(pages.length + 1) !== section.leaf) note()
    if (index === sections.length - 1) while ((pages.length + 1) % 4 !== 0) note()
    pages.push(section)
  }
  return pages
}

function pageNumbers(pages: readonly PageBody[]): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>()
  for (const [index, page] of pages.entries())
    for (const key of [page.key, ...(page.alsoHolds ?? [])])
      if (!numbers.has(key)) numbers.set(key, index + 1)
  return numbers
}

function lackingGlyphs({ rig, station, lines, setting: { covers } }: Book): readonly Finding[] {
  if (!covers) return []
  const named = [
    { label: rig.vessel.name, span: rig.vessel.span },
    { label: station.label, span: station.span },
    ...lines.sails,
    ...[...new Set([...lines.own, ...lines.othersHere, ...lines.lent])],
  ]
  const lacking = named.filter(
    ({ label }) => !covers(label, 'Spectral Medium') || !covers(label, 'Fira Sans Condensed'),
  )
  return lacking.map(({ label, span }) => ({
    rule: 'sheet/no-glyph',
    severity: 'warning',
    at: span,
    message: `The handbook's faces can't print every letter of "${label}".`,
    remedy: 'Give a printed name in letters they have: called "...".',
    related: [],
  }))
}

const stapled = 40

function tooThick(pages: number, { station }: Book): readonly Finding[] {
  if (pages <= stapled) return []
  return [
    {
      rule: 'sheet/book-too-thick',
      severity: 'note',
      at: station.span,
      message: `The ${station.name}'s handbook has ${pages} pages; above ${stapled} a stapled book no longer lies flat.`,
      remedy: 'Print it as single pages and punch them.',
      related: [],
    },
  ]
}
