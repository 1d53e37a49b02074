import { atMost, type Block, flow, setLines, words } from '../flow.ts'

import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import { cautionBox, unboxed } from './order-box.ts'
import { cautionsOf, mindsOf, type Warning } from './order-cautions.ts'
import { orderColumns } from './order-columns.ts'
import { across, type OrderSetting } from './order-layout.ts'
import type { PhasePart } from './order-parts.ts'
import { donePart, type Part, partsUnder, quoted, spoken, spokenWidth } from './order-under.ts'
import { black, points, type } from './type.ts'

const orderLeading = points(16)

/** The least from a box, an order or a word-block to the baseline in the next word-block, in millimetres. */
const underBox = 4.3
const underOrder = 5
const blockStep = 4.85

/**
 * One phase of a working order, always in this order down the page: numeral, order and answer, cautions, haul
 * beside ease, hold, tend, stand by, aloft, done when and report. `y` is the rule above it, `bottom` the one below.
 */
export function orderPhase(part: PhasePart, y: number, set: OrderSetting): Block {
  const { phase } = part
  const head = orderLine(part, y + set.pace.order, set)
  const warnings = warningsAt(part, head, set)
  const firstLine = warnings.bottom + (warnings.lines > 0 ? set.pace.lines : set.pace.bare)
  const columns = orderColumns(part, firstLine, set)
  const marks: Mark[] = [...head.marks, ...warnings.marks, ...columns.marks]
  let baseline = columns.lines > 0 ? columns.bottom : undefined
  let afterBlock = false
  const place = (part: Part, gap: number) => {
    const step = part.isBlock && afterBlock ? Math.max(gap, blockStep) : gap
    const first = part.isBlock
      ? Math.max(firstLine, warnings.bottom + (warnings.lines > 0 ? underBox : underOrder))
      : firstLine
    const block = part.draw(baseline === undefined ? first : baseline + step)
    marks.push(...block.marks)
    baseline = block.bottom
    afterBlock = part.isBlock && block.lines < 2
  }
  for (const part of partsUnder(phase, !columns.holdsStandBy, set)) place(part, set.pace.group)
  for (const part of donePart(phase, set)) place(part, set.pace.done)
  const bottom = (baseline ?? warnings.bottom) + set.pace.close
  return { marks: [tagged('Sect', marks)], bottom, lines: 1 }
}

/** The line of an order, and the room that is left on it after the order's words. */
interface OrderLine extends Block {
  readonly room: { readonly from: number; readonly to: number; readonly y: number }
}

function orderLine({ phase, isContinued }: PhasePart, y: number, set: OrderSetting): OrderLine {
  const { ruler } = set.book.setting
  const measure = across.right - across.text
  const order = isContinued ? [words('continued', type.textItalic)] : [words(quoted(phase.order), type.order)]
  const lines = atMost(set.mostLines, flow(order, measure, ruler), measure, ruler)
  const drawn = setLines(lines, { x: across.text, y }, orderLeading, ruler)
  const numeral = lettered(
    ruler,
    { x: 0, y: y + 1.35 },
    String(phase.number),
    { ...type.phaseNumeral, tabular: true },
    black,
  )
  const heading = tagged('H3', [numeral, ...drawn.marks], {
    actual: `Phase ${phase.number}${isContinued ? ', continued' : ''}. Order: ${phase.order}`,
  })
  const width = lines.at(-1)?.width ?? 0
  const room = { from: across.text + width + 3, to: across.right, y: drawn.bottom }
  if (phase.answer === undefined) return { ...drawn, marks: [heading], room }
  const answerWidth = spokenWidth('answer', phase.answer, set)
  const fits = answerWidth <= measure - width - 3
  const answer = spoken('answer', phase.answer, fits ? drawn.bottom : drawn.bottom + points(13), set)
  return {
    marks: [heading, ...answer.marks],
    bottom: answer.bottom,
    lines: drawn.lines + (fits ? 0 : 1),
    room: fits ? { ...room, to: across.right - answerWidth - 3 } : room,
  }
}

// In a box; on a page that takes all there is, on the order's own line if they have room there, and what the text
// says to mind under it without a box.
function warningsAt(part: PhasePart, head: OrderLine, set: OrderSetting): Block {
  const { phase, told } = part
  const minds = mindsOf(phase, set)
  const all = cautionsOf(phase, () => 'in words', set)
  if (!set.isCondensed) return cautionBox([...all, ...minds], head.bottom + set.pace.box, set)
  const briefly = cautionsOf(phase, number => (told.has(number) ? 'by number' : 'in words'), set)
  const onLine = [all, briefly].find(some => widthOf(some) <= head.room.to - head.room.from)
  if (!onLine) return cautionBox([...briefly, ...minds], head.bottom + set.pace.box, set)
  const beside = alongLine(onLine, head.room)
  if (minds.length === 0) return { marks: beside, bottom: head.bottom, lines: 0 }
  const under = unboxed(minds, head.bottom + set.pace.leading)
  return {
    ...under,
    marks: [...beside, ...under.marks],
    bottom: under.bottom + set.pace.leading - set.pace.lines,
  }
}

const between = 2.4

const widthOf = (warnings: readonly Warning[]): number =>
  warnings.reduce((total, { width }) => total + width + between, -between)

function alongLine(warnings: readonly Warning[], { from, y }: OrderLine['room']): readonly Mark[] {
  let x = from
  return warnings.map(warning => {
    const mark = tagged('P', warning.draw(x, y))
    x += warning.width + between
    return mark
  })
}
