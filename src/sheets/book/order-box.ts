import { cautionAt, type OrderPhase } from '../../evolve/index.ts'
import type { Mark } from '../sheet.ts'
import { cautionMarkWidth, numberedCaution } from './caution-mark.ts'
import { type Block, flow, setLines, words } from './flow.ts'
import { across, type OrderSetting } from './order-layout.ts'
import { curled } from './order-names.ts'
import { tagged } from './tagged.ts'
import { black, rule, type } from './type.ts'

/** Lighter than the cautions it stands beside. */
const mindType = { ...type.cautionFull, size: type.cautionShort.size }

const box = { line: 4.15, text: 12.4, right: 117, between: 3.2 } as const

/**
 * The box of cautions over the hauls they guard: the sign, the number and the short words, two or three to a
 * line, then what the text itself says to mind. `y` is its upper edge; nothing is drawn where there is nothing.
 */
export function cautionBox(phase: OrderPhase, y: number, set: OrderSetting): Block {
  const items = [
    ...phase.cautions.flatMap(number => cautionItem(number, set)),
    ...phase.minds.map(mind => mindItem(mind, set)),
  ]
  if (items.length === 0) return { marks: [], bottom: y, lines: 0 }
  const placed = inLines(items)
  const lines = Math.max(...placed.map(({ line, item }) => line + item.lines))
  const bottom = y + set.pace.boxed + (lines - 1) * box.line + (set.pace.boxed - 2.4)
  const said = placed.map(({ item, x, line }) =>
    tagged('P', item.draw(x, y + set.pace.boxed + line * box.line)),
  )
  return { marks: [...outline(y, bottom), tagged('Div', said)], bottom, lines }
}

interface Item {
  readonly width: number
  readonly lines: number
  readonly draw: (x: number, y: number) => readonly Mark[]
}

const measure = box.right - box.text

function cautionItem(number: number, { book, cautions }: OrderSetting): readonly Item[] {
  const caution = cautionAt(number)
  if (!caution) return []
  const { ruler } = book.setting
  const { size } = type.cautionShort
  const lead = cautionMarkWidth(size) + ruler(String(number), type.cautionShort) + 1.9
  const draw = (x: number, y: number): readonly Mark[] => [
    tagged('Span', numberedCaution(number, { x, y }, size, ruler), { actual: `Caution ${number}. ` }),
    ...setLines(
      flow([words(`${caution[cautions]} `, type.cautionShort)], measure, ruler),
      { x: x + lead, y },
      box.line,
      ruler,
    ).marks,
  ]
  return [{ width: lead + ruler(caution[cautions], type.cautionShort), lines: 1, draw }]
}

// What the bosun wrote beside the numbered cautions stands with them, without the sign.
function mindItem(mind: string, { book }: OrderSetting): Item {
  const { ruler } = book.setting
  const lines = flow(
    [words('Mind: ', type.cautionShort), words(`${curled(mind)} `, mindType)],
    measure,
    ruler,
  )
  return {
    width: Math.max(0, ...lines.map(({ width }) => width)),
    lines: lines.length,
    draw: (x, y) => setLines(lines, { x, y }, box.line, ruler).marks,
  }
}

interface Placed {
  readonly item: Item
  readonly x: number
  readonly line: number
}

function inLines(items: readonly Item[]): readonly Placed[] {
  const placed: Placed[] = []
  let x: number = box.text
  let line = 0
  for (const item of items) {
    const isFull = x > box.text && (x + item.width > box.right || item.lines > 1)
    if (isFull) {
      x = box.text
      line++
    }
    placed.push({ item, x, line })
    x += item.width + box.between
    if (item.lines > 1) {
      x = box.right
      line += item.lines - 1
    }
  }
  return placed
}

function outline(top: number, bottom: number): readonly Mark[] {
  const corners = (left: number, right: number) => [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ]
  const inset = rule.frame / 2
  return [
    {
      kind: 'line',
      points: corners(across.text + inset, across.right - inset),
      closed: true,
      pen: { ink: black, width: rule.frame },
    },
    {
      kind: 'line',
      points: corners(across.text, across.text + rule.cautionEdge),
      closed: true,
      fill: { ink: black },
    },
  ]
}
