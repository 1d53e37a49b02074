import {
  type Caution,
  type CautionGroup,
  cautionGroups,
  cautions,
  cautionsAboard,
  governingNote,
} from '../../evolve/index.ts'
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

const numbers = ['Eight', 'Nine', 'Ten', 'Eleven', 'Twelve', 'Thirteen', 'Fourteen'] as const
const least = cautions.length - numbers.length + 1

/**
 * The page of the cautions that bite aboard, under the numbers they keep in every book, grouped by where they
 * bite. Of fourteen, those are left out that speak of what she has not.
 */
export function cautionPages(book: Book): Found<readonly PageBody[]> {
  const { ruler } = book.setting
  const aboard = cautionsAboard(book.rig, book.evolutions)
  const title = `${numbers[aboard.length - least] ?? aboard.length} cautions`
  const isWhole = aboard.length === cautions.length
  const head = pageTitle(title, ruler)
  const under = subtitle(
    `Numbers follow them through the book: where one bites, it is printed again in that phase, before the haul.${
      isWhole ? '' : ' Numbers left out speak of what she has not.'
    }`,
    head.bottom + 6.6,
    ruler,
  )
  const marks: Mark[] = [...head.marks, ...under.marks]
  let bottom = under.bottom
  for (const group of cautionGroups) {
    const own = aboard.filter(caution => caution.group === group)
    if (own.length === 0) continue
    const section = sectionHead(headingOf(group, own), bottom + 7.6, ruler)
    const rows = cautionRows(own, section.bottom, ruler)
    marks.push(...section.marks, ...rows.marks)
    bottom = rows.bottom
  }
  const note = governing(bottom + 4.2, ruler)
  marks.push(...note.marks)
  const description =
    'The cautions, each under its number, grouped by where they bite; and what governs above them.'
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

/** A vessel without yards has no heading that speaks of them. */
function headingOf(group: CautionGroup, own: readonly Caution[]): string {
  const says = (word: RegExp) => own.some(({ full }) => word.test(full))
  if (group !== 'Halyards and yards' || says(/\bthe yard\b/)) return group
  return says(/\bgaff\b/) ? 'Halyards and gaffs' : 'Halyards'
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
