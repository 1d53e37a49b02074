import type { Line } from '../../rig/index.ts'
import { fitted } from '../flow.ts'
import { functionMark } from '../function-mark.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { artifact, tagged } from '../tagged.ts'
import type { Typeface } from '../typeface.ts'
import { addressesOf, addressMarks, addressWidth, addressWords } from './address.ts'
import type { AnswerNode } from './answer-graph.ts'
import type { Book } from './book.ts'
import { briefStation, lowered } from './order-names.ts'
import { black, rule } from './type.ts'

export const boxHeight = 4.6

interface Box {
  readonly left: number
  readonly right: number
  /** Its upper edge. */
  readonly top: number
}

const name = (size: number): Typeface => ({ face: 'Fira Sans Condensed SemiBold', size })
const note = (size: number): Typeface => ({ face: 'Fira Sans Condensed Italic', size })
/** How a box may be worded, the fullest first: its type is only made smaller once its words are brief. */
const wordings = [
  { size: 10, whose: 'full' },
  { size: 10, whose: 'brief' },
  { size: 9.4, whose: 'brief' },
  { size: 8.8, whose: 'brief' },
  { size: 8.8, whose: 'none' },
  { size: 8.2, whose: 'none' },
] as const

type Wording = (typeof wordings)[number]

/** A line or a pair in its box: deed, name, whose it is, and where; dashed where another station works it. */
export function answerBox(node: AnswerNode, { left, right, top }: Box, book: Book): readonly Mark[] {
  const { ruler } = book.setting
  const [line] = node.lines
  if (!line) return []
  const base = top + 3.5
  const room = right - left - textInset - 1.2
  const wording = wordings.find(one => contentWidth(node, one, book) <= room) ?? wordings[wordings.length - 1]
  const face = name(wording?.size ?? 8.2)
  const addresses = addressesOf(node.lines, book.rig)
  const where = addresses.reduce((total, address) => total + addressWidth(address, face, ruler) + 1.2, 0)
  const words = fitted(lowered(line.labelOnSail, line), [face], Math.max(6, room - where), ruler)
  const heading = lettered(ruler, { x: left + textInset, y: base }, `${words.words} `, face, black)
  let x = right - where
  const places = addresses.map(address => {
    const marks = addressMarks(address, { x, y: base }, face, ruler)
    x += addressWidth(address, face, ruler) + 1.2
    return tagged('Span', marks, { actual: ` ${addressWords(address)}` })
  })
  const aside = wording ? asideOf(node, wording, book) : ''
  const after = { x: left + textInset + heading.width + 0.6, y: base }
  return [
    artifact([outline({ left, right, top }, isOthers(node, book)), ...deedMark(line, left, top)]),
    heading,
    ...(aside === '' ? [] : [lettered(ruler, after, aside, note(face.size - 0.4), black)]),
    ...places,
  ]
}

const textInset = 5.8

const isOthers = ({ lines }: AnswerNode, { station }: Book): boolean =>
  lines.every(line => line.station !== station.name)

function contentWidth(node: AnswerNode, wording: Wording, book: Book): number {
  const { ruler } = book.setting
  const face = name(wording.size)
  const where = addressesOf(node.lines, book.rig).reduce(
    (total, one) => total + addressWidth(one, face, ruler) + 1.2,
    0,
  )
  const [line] = node.lines
  const words = ruler(`${line ? lowered(line.labelOnSail, line) : ''} `, face)
  const aside = asideOf(node, wording, book)
  return words + where + (aside === '' ? 0 : ruler(aside, note(wording.size - 0.4)) + 1.4)
}

/** 'each other' for a pair that answers itself, and whose the line is. */
function asideOf(node: AnswerNode, { whose }: Wording, book: Book): string {
  const station = book.rig.stationAt.get(node.lines[0]?.station ?? '')?.label
  const isTold = whose !== 'none' && station !== undefined && isOthers(node, book)
  const told = isTold ? (whose === 'full' ? station.toLowerCase() : briefStation(station)) : ''
  return [node.answersItself ? 'each other' : '', told].filter(text => text !== '').join(', ')
}

const deedMark = (line: Line, left: number, top: number): readonly Mark[] =>
  line.function ? functionMark(line.function, { x: left + 3, y: top + boxHeight / 2 }, 1.15, black) : []

function outline({ left, right, top }: Box, isOthers: boolean): Mark {
  const inset = rule.box / 2
  return {
    kind: 'line',
    points: [
      { x: left + inset, y: top + inset },
      { x: right - inset, y: top + inset },
      { x: right - inset, y: top + boxHeight - inset },
      { x: left + inset, y: top + boxHeight - inset },
    ],
    closed: true,
    pen: { ink: black, width: rule.box, ...(isOthers ? { dash: [1.1, 0.7] } : {}) },
  }
}
