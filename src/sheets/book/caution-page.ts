import { type Caution, cautionGroups, cautions, governingNote } from '../../evolve/index.ts'
import type { Found } from '../../findings/index.ts'
import { type Block, words } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import type { Ruler } from '../typeface.ts'
import type { Book } from './book.ts'
import { cautionMark } from './caution-mark.ts'
import { live, type PageBody } from './page.ts'
import { pageKey } from './page-key.ts'
import { level, pageTitle, paragraph, sectionHead, subtitle } from './page-parts.ts'
import { black, leading, rule, type } from './type.ts'

const title = 'Fourteen cautions'

/** The page of all cautions, under the numbers they keep, grouped by where they bite. */
export function cautionPages(book: Book): Found<readonly PageBody[]> {
  const { ruler } = book.setting
  const head = pageTitle(title, ruler)
  const under = subtitle(
    'Numbers follow them through the book: where one bites, it is printed again in that phase, before the haul.',
    head.bottom + 6.6,
    ruler,
  )
  const marks: Mark[] = [...head.marks, ...under.marks]
  let bottom = under.bottom
  for (const group of cautionGroups) {
    const section = sectionHead(group, bottom + 7.6, ruler)
    const rows = cautionRows(
      cautions.filter(caution => caution.group === group),
      section.bottom,
      ruler,
    )
    marks.push(...section.marks, ...rows.marks)
    bottom = rows.bottom
  }
  const note = governing(bottom + 4.2, ruler)
  marks.push(...note.marks)
  const description =
    'The fourteen cautions, each under its number, grouped by where they bite; and what governs above them.'
  return {
    value: [
      {
        key: pageKey.cautions,
        title,
        section: 'Cautions',
        description,
        marks,
        bookmarks: [{ level: 1, title }],
      },
    ],
    findings: [],
  }
}

function cautionRows(group: readonly Caution[], y: number, ruler: Ruler): Block {
  const rows: Mark[] = []
  let bottom = y - 0.9
  for (const caution of group) {
    const base = bottom + 5.9
    const text = paragraph([words(caution.full, type.cautionFull)], base, ruler, {
      x: 14.5,
      measure: live.width - 14.5,
      led: leading.cautionFull,
    })
    const number = lettered(ruler, { x: 7, y: base }, String(caution.number), type.cautionNumber, black)
    const label = tagged('Lbl', [...cautionMark({ x: 0, y: base }, 11.5), number], {
      actual: `Caution ${caution.number}. `,
    })
    rows.push(tagged('LI', [label, tagged('LBody', text.marks)]))
    bottom = text.bottom
  }
  return { marks: [tagged('L', rows)], bottom, lines: rows.length }
}

function governing(y: number, ruler: Ruler): Block {
  const text = paragraph([words(governingNote, type.textItalic)], y + 4.6, ruler)
  return { ...text, marks: [level(0, live.width, y, rule.section), ...text.marks] }
}
