import type { Found } from '../../findings/index.ts'
import type { Block } from '../flow.ts'
import { words } from '../flow.ts'
import type { Mark } from '../sheet.ts'
import type { Book } from './book.ts'
import { deckPlan } from './deck-plan.ts'
import { glanceCounts } from './glance-counts.ts'
import { glanceRails } from './glance-rails.ts'
import { glanceSails } from './glance-sails.ts'
import { live, type PageBody } from './page.ts'
import { pageKey } from './page-key.ts'
import { continuedTitle, pageTitle, paragraph, sectionHead } from './page-parts.ts'
import { type } from './type.ts'

const title = 'The station at a glance'

/** A part of the page that is not split: how far it reaches below its top, and its marks there. */
export interface GlancePart {
  readonly height: number
  readonly draw: (top: number) => readonly Mark[]
}

/** A section of the page: its heading stays with its first part. */
export interface GlanceSection {
  readonly heading: string
  readonly parts: readonly GlancePart[]
  /** A table is not parted, for its head would be left behind; unless it is longer than any page. */
  readonly isTable?: boolean
}

/** What a station has to do with, on a page: counts, where it stands, its rails, and what its sails want. */
export function glancePages(book: Book): Found<readonly PageBody[]> {
  const { ruler } = book.setting
  const head = pageTitle(title, ruler)
  const duty = paragraph([words(dutyWords(book), type.subtitle)], head.bottom + 6.2, ruler, { led: 4.2 })
  const counts = glanceCounts(book, duty.bottom + 2.6)
  const pages: Mark[][] = [[...head.marks, ...duty.marks, ...counts.marks]]
  let y = counts.bottom
  for (const section of [deckPlan(book), glanceRails(book), glanceSails(book)]) {
    const [first, ...rest] = section?.parts ?? []
    if (!section || !first) continue
    const begun = sectionHead(section.heading, y + 6.2, ruler)
    if (beginsOverleaf(section, live.textBottom - begun.bottom)) y = turned(pages, book)
    const heading: Block = sectionHead(section.heading, y + 6.2, ruler)
    pages.at(-1)?.push(...heading.marks)
    y = heading.bottom
    for (const part of [first, ...rest]) {
      if (y + part.height > live.textBottom) y = turned(pages, book)
      pages.at(-1)?.push(...part.draw(y))
      y += part.height
    }
  }
  return { value: pages.map((marks, index) => body(marks, index, book)), findings: [] }
}

/** Whether a section has no room for its first part here, or would leave no more than a scrap of itself for the next page. */
function beginsOverleaf({ parts, isTable }: GlanceSection, room: number): boolean {
  const whole = parts.reduce((sum, part) => sum + part.height, 0)
  if (isTable && whole > room && whole < longestTable) return true
  let left = room
  const fitting = parts.findIndex(part => {
    left -= part.height
    return left < 0
  })
  return fitting === 0 || (fitting > 0 && parts.length - fitting <= scrap)
}

const scrap = 2
const longestTable = 160

function turned(pages: Mark[][], { setting }: Book): number {
  const head = continuedTitle(title, setting.ruler)
  pages.push([...head.marks])
  return head.bottom + underContinued
}

const underContinued = 2.4

function body(marks: readonly Mark[], index: number, { station }: Book): PageBody {
  return {
    key: index === 0 ? pageKey.glance : `${pageKey.glance} ${index + 1}`,
    title,
    section: title,
    description: `Counts, rails and sails of the ${station.name}, and where it stands on deck.`,
    marks,
    bookmarks: index === 0 ? [{ level: 1, title }] : [],
  }
}

function dutyWords({ station, rig }: Book): string {
  const rails = [...new Set(station.rails.flatMap(code => rig.railAt.get(code)?.name ?? []))]
  return [
    rails.length === 0 ? 'Works no rail of its own.' : `Works the ${listed(rails)}.`,
    station.mannedBy.length === 0 ? '' : `Manned by ${listed(station.mannedBy)}.`,
    station.takes.length === 0 ? '' : `Takes ${listed(station.takes)}.`,
  ]
    .filter(sentence => sentence !== '')
    .join(' ')
}

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
