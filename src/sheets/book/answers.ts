import type { Found } from '../../findings/index.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { artifact, columnHead, tagged } from '../tagged.ts'
import { actionMark } from './action-mark.ts'
import { type AnswerBlock, answerBlock } from './answer-block.ts'
import { gap } from './answer-layout.ts'
import type { Book } from './book.ts'
import { braceSentence } from './brace-sentence.ts'
import { live, type PageBody } from './page.ts'
import { lineKey, pageKey } from './page-key.ts'
import { continuedTitle, pageTitle, paragraph, sectionHead, subtitle } from './page-parts.ts'
import { spreadSails } from './station-sails.ts'
import { black, type } from './type.ts'

const title = 'Who answers whom'
const lead =
  'Joined lines pull against each other: haul one, ease the other. Each answers on its own side of the ship, a single line on both; “each other” are the two of a pair.'

/**
 * Which line must give way when another is hauled: every sail of the station in two columns and joins, another
 * station's lines in dashed boxes, and braces in a sentence. A sail is never parted over two pages.
 */
export function answersPages(book: Book): Found<readonly PageBody[]> {
  const sails = spreadSails(book)
  const blocks = sails.flatMap(sail => answerBlock(sail, book) ?? [])
  const sentence = braceSentence(sails, book)
  if (blocks.length === 0 && !sentence) return { value: [], findings: [] }
  const pages = parted(blocks)
  const value = pages.map((some, index) => answersPage(some, index, book))
  const last = value.at(-1)
  if (!sentence || !last) return { value: value.map(({ body }) => body), findings: [] }
  const height = 6.4 + sentence.lines * sentenceLeading + 1
  const fits = last.bottom + height <= live.textBottom
  const before = value.slice(0, fits ? -1 : undefined).map(({ body }) => body)
  const target = fits ? last : answersPage([], pages.length, book)
  const marks = [...target.body.marks, ...sentenceMarks(sentence, target.bottom, book)]
  return { value: [...before, { ...target.body, marks }], findings: [] }
}

const sentenceLeading = 4.4
const tops = { first: 52.4, later: 40.4 } as const

function parted(blocks: readonly AnswerBlock[]): readonly (readonly AnswerBlock[])[] {
  const pages: AnswerBlock[][] = [[]]
  let left: number = live.textBottom - tops.first
  for (const block of blocks) {
    const page = pages.at(-1)
    if (page && page.length > 0 && block.height > left) {
      pages.push([])
      left = live.textBottom - tops.later
    }
    pages.at(-1)?.push(block)
    left -= block.height
  }
  return pages
}

function answersPage(
  blocks: readonly AnswerBlock[],
  index: number,
  book: Book,
): { body: PageBody; bottom: number } {
  const { ruler } = book.setting
  const isFirst = index === 0
  const heading = isFirst
    ? [...pageTitle(title, ruler).marks, ...subtitle(lead, 33.6, ruler).marks]
    : continuedTitle(title, ruler).marks
  const top = isFirst ? tops.first : tops.later
  const heads = columnHeads(top - 7.6, isFirst, book)
  const marks: Mark[] = []
  let y: number = top
  for (const block of blocks) {
    marks.push(...block.draw(y))
    y += block.height
  }
  const table =
    blocks.length === 0 ? [] : [tagged('Table', [...heads.inside, ...marks], { key: 'who answers whom' })]
  return {
    bottom: y,
    body: {
      key: isFirst ? pageKey.answers : `${pageKey.answers} ${index + 1}`,
      title,
      section: title,
      description: `${title}: the lines that set each sail and those that take it in, and which must be eased when another is hauled.`,
      marks: [...heading, ...(blocks.length > 0 ? heads.outside : []), ...table],
      bookmarks: isFirst ? [{ level: 1, title }] : [],
      alsoHolds: blocks.flatMap(block => block.pairKeys.map(lineKey)),
    },
  }
}

function columnHeads(y: number, isFirst: boolean, { setting: { ruler } }: Book) {
  const face = { ...type.workingAddress, size: 11 }
  const half = (
    x: number,
    name: string,
    haul: string,
    ease: string,
  ): { head: Mark; legend: readonly Mark[] } => {
    const base = y + 4.6
    const second = x + 3.6 + ruler(haul, type.note) + 3.4
    return {
      head: lettered(ruler, { x, y }, name, face, black),
      legend: [
        ...actionMark('haul', { x: x + 1.3, y: base - 1.15 }, 1.25),
        lettered(ruler, { x: x + 3.2, y: base }, haul, type.note, black),
        ...actionMark('ease', { x: second + 1.3, y: base - 1.15 }, 1.25),
        lettered(ruler, { x: second + 3.2, y: base }, ease, type.note, black),
      ],
    }
  }
  const halves = [
    half(0, 'Lines that set the sail', 'haul to set', 'ease to douse'),
    half(gap.right, 'Lines that take it in', 'haul to douse', 'ease to set'),
  ]
  const legends = artifact(halves.flatMap(({ legend }) => legend))
  if (!isFirst) return { inside: [], outside: [artifact([...halves.map(({ head }) => head), legends])] }
  const cells = halves.map(({ head }) => columnHead([head]))
  return {
    inside: [tagged('THead', [tagged('TR', cells)], { key: 'who answers whom head' })],
    outside: [legends],
  }
}

function sentenceMarks(
  sentence: NonNullable<ReturnType<typeof braceSentence>>,
  y: number,
  { setting: { ruler } }: Book,
): readonly Mark[] {
  if (sentence.heading === undefined) return paragraph(sentence.pieces, y + 3, ruler).marks
  const head = sectionHead(sentence.heading, y + 4.3, ruler, { type: type.sectionInTable })
  const text = paragraph(sentence.pieces, head.bottom + 4.6, ruler, { led: sentenceLeading })
  return [...head.marks, ...text.marks]
}
