import type { OrderPhase } from '../../evolve/index.ts'
import { atMost, type Block, flow, setLines, words } from '../flow.ts'
import { tagged } from '../tagged.ts'
import { across, type OrderSetting } from './order-layout.ts'
import { entriesSet, type ListColumn, lineList } from './order-lines.ts'
import type { PhasePart } from './order-parts.ts'
import { remarksOf } from './order-remarks.ts'
import { upright } from './page-parts.ts'
import { rule, type } from './type.ts'

const haulColumn: ListColumn = {
  mark: across.haul.mark,
  address: across.haul.address,
  name: across.haul.name,
  right: across.haul.right,
  showsHands: true,
}
const easeColumn: ListColumn = {
  mark: across.ease.mark,
  address: across.ease.address,
  name: across.ease.name,
  right: across.ease.right,
  showsHands: false,
}
const standingColumn: ListColumn = { ...haulColumn, mark: undefined, showsHands: false }

/** What the two columns of a phase hold, and whether the lines stood by found room in the left one. */
export interface Columns extends Block {
  readonly holdsStandBy: boolean
}

/**
 * Haul to the left, ease or let go to the right, with what was freed before; an empty side says so. Lines to
 * stand by fill the left side where nothing is hauled and there is room. `y` is the first baseline; a phase
 * that neither hauls nor eases has no columns. Of a phase that begins on an earlier page, an empty side says nothing.
 */
export function orderColumns({ phase, isContinued }: PhasePart, y: number, set: OrderSetting): Columns {
  const empty: Columns = { marks: [], bottom: y, lines: 0, holdsStandBy: false }
  if (phase.haul.length === 0 && phase.ease.length === 0) return empty
  const right = lineList(entriesSet(phase.ease, set), easeColumn, y, set)
  if (phase.haul.length === 0) {
    const none = isContinued ? empty : noHaulSide(phase, y, right.lines, set)
    return besideEachOther(none, right, y, set)
  }
  const left = lineList(entriesSet(phase.haul, set), haulColumn, y, set)
  const sides = withRemarks(isContinued ? [] : remarksOf(phase, set), left, right, y, set)
  return besideEachOther({ ...sides.left, holdsStandBy: false }, sides.right, y, set)
}

function besideEachOther(left: Columns, right: Block, y: number, { pace }: OrderSetting): Columns {
  const lines = Math.max(left.lines, right.lines)
  const bottom = y + (lines - 1) * pace.leading
  const divider = upright(across.gutter, y - 2.9, bottom + 1, rule.frame)
  return { marks: [...left.marks, divider, ...right.marks], bottom, lines, holdsStandBy: left.holdsStandBy }
}

// A remark stands on the ease side, where a hand looks for what answers; under the haul it belongs to where the
// ease side is the longer.
function withRemarks(remarks: readonly string[], left: Block, right: Block, y: number, set: OrderSetting) {
  let sides = { left, right }
  for (const text of remarks) {
    const { haul, ease } = across
    const under = remark(text, haul.address, haul.right, y + sides.left.lines * set.pace.leading, set)
    const beside = remark(text, ease.remark, ease.right, y + sides.right.lines * set.pace.leading, set)
    const fitsUnder = sides.left.lines + under.lines <= sides.right.lines
    sides = fitsUnder
      ? { ...sides, left: continued(sides.left, under) }
      : { ...sides, right: continued(sides.right, beside) }
  }
  return sides
}

const continued = (above: Block, below: Block): Block => ({
  marks: [...above.marks, ...below.marks],
  bottom: below.bottom,
  lines: above.lines + below.lines,
})

function noHaulSide(phase: OrderPhase, y: number, room: number, set: OrderSetting): Columns {
  const none = remark('no haul in this phase', across.haul.address, across.haul.right, y, set)
  const standing = entriesSet(phase.standBy, set)
  const label = y + (none.lines + 0.3) * set.pace.leading
  const list = lineList(standing, standingColumn, label + set.pace.leading, set)
  const lines = none.lines + 1.3 + list.lines
  if (standing.length === 0 || lines > room + 0.2) return { ...none, holdsStandBy: false }
  const { ruler } = set.book.setting
  const heading = setLines(
    flow([words('stand by, manned ', type.workingAddress)], 60, ruler),
    { x: across.haul.address, y: label },
    0,
    ruler,
  )
  return {
    marks: [...none.marks, tagged('P', heading.marks), ...list.marks],
    bottom: list.bottom,
    lines,
    holdsStandBy: true,
  }
}

function remark(
  text: string,
  x: number,
  right: number,
  y: number,
  { book, pace, mostLines }: OrderSetting,
): Block {
  const { ruler } = book.setting
  const lines = atMost(
    mostLines,
    flow([words(`${text} `, type.workingOthers)], right - x, ruler),
    right - x,
    ruler,
  )
  const set = setLines(lines, { x, y }, pace.leading, ruler)
  return { ...set, marks: [tagged('P', set.marks)] }
}
