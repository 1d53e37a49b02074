import type { OrderPhase } from '../../evolve/index.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { type Block, flow, setLines, words } from './flow.ts'
import { cautionBox } from './order-box.ts'
import { orderColumns } from './order-columns.ts'
import { across, type OrderSetting } from './order-layout.ts'
import { donePart, type Part, partsUnder, quoted, spoken, spokenWidth } from './order-under.ts'
import { tagged } from './tagged.ts'
import { black, points, type } from './type.ts'

const orderLeading = points(16)

/** The least from what stands above to the baseline in a word-block, and from one block to the next, in millimetres. */
const blockRoom = 4.3
const blockStep = 4.85

/**
 * One phase of a working order, always in this order down the page: numeral, order and answer, cautions, haul
 * beside ease, hold, tend, stand by, aloft, done when and report. `y` is the rule above it, `bottom` the one below.
 */
export function orderPhase(phase: OrderPhase, y: number, set: OrderSetting): Block {
  const head = orderLine(phase, y + set.pace.order, set)
  const box = cautionBox(phase, head.bottom + set.pace.box, set)
  const hasBox = box.lines > 0
  const firstLine = box.bottom + (hasBox ? set.pace.lines : set.pace.lines - 0.6)
  const columns = orderColumns(phase, firstLine, set)
  const marks: Mark[] = [...head.marks, ...box.marks, ...columns.marks]
  let baseline = columns.lines > 0 ? columns.bottom : undefined
  let afterBlock = false
  const place = (part: Part, gap: number) => {
    const step = part.isBlock && afterBlock ? Math.max(gap, blockStep) : gap
    const first = part.isBlock ? Math.max(firstLine, box.bottom + blockRoom) : firstLine
    const block = part.draw(baseline === undefined ? first : baseline + step)
    marks.push(...block.marks)
    baseline = block.bottom
    afterBlock = part.isBlock && block.lines < 2
  }
  for (const part of partsUnder(phase, !columns.holdsStandBy, set)) place(part, set.pace.group)
  for (const part of donePart(phase, set)) place(part, set.pace.done)
  const bottom = (baseline ?? (hasBox ? box.bottom : head.bottom)) + set.pace.close
  return { marks: [tagged('Sect', marks)], bottom, lines: 1 }
}

function orderLine(phase: OrderPhase, y: number, set: OrderSetting): Block {
  const { ruler } = set.book.setting
  const measure = across.right - across.text
  const lines = flow([words(quoted(phase.order), type.order)], measure, ruler)
  const order = setLines(lines, { x: across.text, y }, orderLeading, ruler)
  const numeral = lettered(
    ruler,
    { x: 0, y: y + 1.35 },
    String(phase.number),
    { ...type.phaseNumeral, tabular: true },
    black,
  )
  const heading = tagged('H3', [numeral, ...order.marks], {
    actual: `Phase ${phase.number}. Order: ${phase.order}`,
  })
  if (phase.answer === undefined) return { marks: [heading], bottom: order.bottom, lines: order.lines }
  const room = measure - (lines.at(-1)?.width ?? 0) - 3
  const fits = spokenWidth('answer', phase.answer, set) <= room
  const bottom = fits ? order.bottom : order.bottom + points(13)
  return {
    marks: [heading, ...spoken('answer', phase.answer, bottom, set)],
    bottom,
    lines: order.lines + (fits ? 0 : 1),
  }
}
