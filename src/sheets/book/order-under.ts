import type { OrderPhase, OrderRow } from '../../evolve/index.ts'
import { atMost, type Block, flow, type SetLine, setLines, words } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import { actionBlock } from './action-mark.ts'
import type { Entry } from './order-entry.ts'
import { across, type OrderSetting } from './order-layout.ts'
import { entriesSet, entryWidth, type ListColumn, lineItem } from './order-lines.ts'
import { curled } from './order-names.ts'
import { black, leading, type } from './type.ts'

/** A part of a phase under its columns, drawn once it knows its first baseline. */
export interface Part {
  /** Whether it begins with a word-block, which stands higher than a line. */
  readonly isBlock: boolean
  readonly draw: (y: number) => Block
}

/** What stands under the columns of a phase, in its fixed order: hold, tend, stand by, aloft. */
export function partsUnder(phase: OrderPhase, standsBelow: boolean, set: OrderSetting): readonly Part[] {
  return [
    ...blockPart('hold', phase.hold, set),
    ...blockPart('tend', phase.tend, set),
    ...(standsBelow ? labelPart('stand by', phase.standBy, set) : []),
    ...aloftPart(phase, set),
  ]
}

/** The row that says what ends the phase, and what is then called aft. */
export function donePart({ until, report }: OrderPhase, set: OrderSetting): readonly Part[] {
  if (until === undefined && report === undefined) return []
  return [{ isBlock: false, draw: y => doneRow(until, report, y, set) }]
}

function blockPart(act: 'hold' | 'tend', rows: readonly OrderRow[], set: OrderSetting): readonly Part[] {
  if (rows.length === 0) return []
  const { ruler } = set.book.setting
  return [
    {
      isBlock: true,
      draw: y => {
        const block = actionBlock(act, { x: across.text, y: y - 3.35 }, across.block, type.actionWord, ruler)
        const list = listUnder(entriesSet(rows, set), y, set)
        const said = tagged('Lbl', block)
        return { ...list, marks: [tagged('L', [tagged('LI', [said, ...list.marks])])] }
      },
    },
  ]
}

function labelPart(label: string, rows: readonly OrderRow[], set: OrderSetting): readonly Part[] {
  if (rows.length === 0) return []
  return [
    {
      isBlock: false,
      draw: y => {
        const list = listUnder(entriesSet(rows, set), y, set)
        return { ...list, marks: [tagged('P', [labelAt(label, y, set)]), tagged('L', list.marks)] }
      },
    },
  ]
}

const labelAt = (label: string, y: number, { book }: OrderSetting): Mark =>
  lettered(book.setting.ruler, { x: across.text, y }, `${label} `, type.workingAddress, black)

const wide: ListColumn = { mark: undefined, ...across.under, showsHands: false }
const first: ListColumn = { ...wide, name: 0, right: across.under.second - 1.5 }
const second: ListColumn = { ...wide, address: across.under.second, name: 0 }

// Two lines to a row where both are short, so that a page holds more phases; one to a row where a name runs on.
function listUnder(entries: readonly Entry[], y: number, set: OrderSetting): Block {
  const marks: Mark[] = []
  let lines = 0
  const isShort = (entry: Entry | undefined) =>
    entry !== undefined && entryWidth(entry, set) <= first.right - first.address
  const inTwo = entries.some((entry, at) => at % 2 === 1 && isShort(entry) && isShort(entries[at - 1]))
  const single = inTwo ? { ...wide, name: 0 } : wide
  for (let at = 0; at < entries.length; ) {
    const [left, right] = [entries[at], entries[at + 1]]
    if (!left) break
    const isPair = right !== undefined && isShort(left) && isShort(right)
    const row = isPair
      ? [
          lineItem(left, first, y + lines * set.pace.leading, set, false),
          lineItem(right, second, y + lines * set.pace.leading, set, false),
        ]
      : [lineItem(left, single, y + lines * set.pace.leading, set, false)]
    marks.push(...row.map(item => tagged('LI', item.marks)))
    lines += Math.max(...row.map(item => item.lines))
    at += row.length
  }
  return { marks, bottom: y + Math.max(0, lines - 1) * set.pace.leading, lines }
}

function aloftPart({ aloft }: OrderPhase, set: OrderSetting): readonly Part[] {
  if (!aloft) return []
  const { ruler } = set.book.setting
  const number = aloft.hands === undefined ? '' : `${aloft.hands} ${aloft.hands === 1 ? 'hand' : 'hands'}: `
  return [
    {
      isBlock: false,
      draw: y => {
        const lines = sentence(`${number}${curled(aloft.work)} `, set)
        const text = setLines(lines, { x: across.under.address, y }, set.pace.leading, ruler)
        return { ...text, marks: [tagged('P', [labelAt('aloft', y, set), ...text.marks])] }
      },
    },
  ]
}

const underMeasure = across.right - across.under.address

const sentence = (text: string, { book, mostLines }: OrderSetting): readonly SetLine[] => {
  const { ruler } = book.setting
  return atMost(mostLines, flow([words(text, type.working)], underMeasure, ruler), underMeasure, ruler)
}

function doneRow(until: string | undefined, report: string | undefined, y: number, set: OrderSetting): Block {
  const { ruler } = set.book.setting
  const lines = until === undefined ? [] : sentence(`${curled(until)} `, set)
  const text = setLines(lines, { x: across.under.address, y }, set.pace.leading, ruler)
  const said = until === undefined ? [] : [tagged('P', [labelAt('done when', y, set), ...text.marks])]
  if (report === undefined) return { ...text, marks: said }
  const last = lines.at(-1)
  const room = underMeasure - (last ? last.width + 3 : 0)
  const fits = spokenWidth('report', report, set) <= room
  const called = spoken(
    'report',
    report,
    last === undefined || fits ? text.bottom : text.bottom + set.pace.leading,
    set,
  )
  return { marks: [...said, ...called.marks], bottom: called.bottom, lines: lines.length + (fits ? 0 : 1) }
}

/** What is answered or reported, in italics and right-aligned after its label: the label is drawn, and heard, first. */
export function spoken(label: 'answer' | 'report', speech: string, y: number, set: OrderSetting): Block {
  const { ruler } = set.book.setting
  const x = Math.max(across.text, across.right - spokenWidth(label, speech, set))
  const begin = x + ruler(`${label} `, type.answerLabel) + 0.6
  // A hair more than is left, or what just fits would break for the error of a sum.
  const measure = across.right - begin + 0.01
  const lines = atMost(
    set.mostLines,
    flow([words(quoted(speech), type.answer)], measure, ruler),
    measure,
    ruler,
  )
  const quote = setLines(lines, { x: begin, y }, leading.text, ruler)
  const said = lettered(ruler, { x, y }, `${label} `, type.answerLabel, black)
  return { ...quote, marks: [tagged('P', [said, ...quote.marks])] }
}

/** How wide an answer or a report is with its label. */
export function spokenWidth(label: 'answer' | 'report', speech: string, { book }: OrderSetting): number {
  const { ruler } = book.setting
  return ruler(`${label} `, type.answerLabel) + 0.6 + ruler(quoted(speech), type.answer)
}

/** Speech between quotation marks. */
export const quoted = (speech: string): string => `“${curled(speech)}”`
