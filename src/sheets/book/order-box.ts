import type { Block } from '../flow.ts'
import type { Mark } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import { type Warning, warningLeading, warningMeasure } from './order-cautions.ts'
import { across, type OrderSetting } from './order-layout.ts'
import { black, rule } from './type.ts'

const box = { text: 12.4, between: 3.2 } as const
const right = box.text + warningMeasure

/**
 * The box of cautions over the hauls they guard: the sign, the number and the short words, two or three to a
 * line, then what the text itself says to mind. `y` is its upper edge; nothing is drawn where there is nothing.
 */
export function cautionBox(warnings: readonly Warning[], y: number, { pace }: OrderSetting): Block {
  if (warnings.length === 0) return { marks: [], bottom: y, lines: 0 }
  const placed = inLines(warnings)
  const lines = linesOf(placed)
  const bottom = y + pace.boxed + (lines - 1) * warningLeading + (pace.boxed - 2.4)
  const said = placed.map(({ warning, x, line }) =>
    tagged('P', warning.draw(x, y + pace.boxed + line * warningLeading)),
  )
  return { marks: [...outline(y, bottom), tagged('Div', said)], bottom, lines }
}

/** The same without a box, for a page that takes all there is: its first baseline is `y`, its last the bottom. */
export function unboxed(warnings: readonly Warning[], y: number): Block {
  const placed = inLines(warnings)
  const said = placed.map(({ warning, x, line }) =>
    tagged('P', warning.draw(x - box.text + across.text, y + line * warningLeading)),
  )
  const lines = linesOf(placed)
  return { marks: [tagged('Div', said)], bottom: y + (lines - 1) * warningLeading, lines }
}

interface Placed {
  readonly warning: Warning
  readonly x: number
  readonly line: number
}

const linesOf = (placed: readonly Placed[]): number =>
  Math.max(...placed.map(({ line, warning }) => line + warning.lines))

function inLines(warnings: readonly Warning[]): readonly Placed[] {
  const placed: Placed[] = []
  let x: number = box.text
  let line = 0
  for (const warning of warnings) {
    const isFull = x > box.text && (x + warning.width > right || warning.lines > 1)
    if (isFull) {
      x = box.text
      line++
    }
    placed.push({ warning, x, line })
    x += warning.width + box.between
    if (warning.lines > 1) {
      x = right
      line += warning.lines - 1
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
