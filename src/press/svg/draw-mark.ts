import type { Container, Element } from '@svgdotjs/svg.js'
import type { Fill, Group, Mark, PathStep, Pen } from '../../sheets/index.ts'
import { round } from '../round.ts'
import { printable } from '../words.ts'
import { drawText } from './draw-text.ts'
import type { Identify } from './identify.ts'

/** Draws a mark into its parent, in the order of the sheet. */
export function drawMark(parent: Container, mark: Mark, identify: Identify): void {
  switch (mark.kind) {
    case 'line':
      finish(drawLine(parent, mark), mark, identify)
      break
    case 'path':
      finish(parent.element('path').attr({ d: pathData(mark.steps) }), mark, identify)
      break
    case 'circle':
      finish(drawCircle(parent, mark), mark, identify)
      break
    case 'text':
      drawText(parent, mark, identify)
      break
    case 'group':
      drawGroup(parent, mark, identify)
      break
    default:
      never(mark)
  }
}

function drawLine(parent: Container, { points, closed = false }: Extract<Mark, { kind: 'line' }>): Element {
  const places = points.map(({ x, y }) => `${round(x)},${round(y)}`).join(' ')
  return parent.element(closed ? 'polygon' : 'polyline').attr({ points: places })
}

function drawCircle(parent: Container, { at, radius }: Extract<Mark, { kind: 'circle' }>): Element {
  return parent.element('circle').attr({ cx: `${round(at.x)}`, cy: `${round(at.y)}`, r: `${round(radius)}` })
}

function drawGroup(parent: Container, group: Group, identify: Identify): void {
  const g = parent.group()
  if (group.id !== undefined) g.attr({ id: identify(group.id) })
  if (group.title !== undefined) g.element('title').words(printable(group.title))
  if (group.offset) g.attr({ transform: `translate(${round(group.offset.x)} ${round(group.offset.y)})` })
  if (group.opacity !== undefined) g.attr({ opacity: `${round(group.opacity)}` })
  if (group.clip) clip(g, group.clip, identify)
  for (const mark of group.marks) drawMark(g, mark, identify)
}

// The shape stands inside the group it cuts, so it moves with the group's offset.
function clip(g: Container, steps: readonly PathStep[], identify: Identify): void {
  const id = identify('clip')
  const shape = g.element('clipPath')
  shape.attr({ id })
  shape.element('path').attr({ d: pathData(steps) })
  g.attr({ 'clip-path': `url(#${id})` })
}

function finish(
  element: Element,
  { id, pen, fill }: { readonly id?: string; readonly pen?: Pen; readonly fill?: Fill },
  identify: Identify,
): void {
  if (id !== undefined) element.attr({ id: identify(id) })
  element.attr({ fill: fill?.ink ?? 'none' })
  if (fill?.opacity !== undefined) element.attr({ 'fill-opacity': `${round(fill.opacity)}` })
  if (!pen) return
  element.attr({ stroke: pen.ink, 'stroke-width': `${round(pen.width)}` })
  if (pen.dash) element.attr({ 'stroke-dasharray': pen.dash.map(round).join(' ') })
  if (pen.cap) element.attr({ 'stroke-linecap': pen.cap })
  if (pen.join) element.attr({ 'stroke-linejoin': pen.join })
  if (pen.opacity !== undefined) element.attr({ 'stroke-opacity': `${round(pen.opacity)}` })
}

function pathData(steps: readonly PathStep[]): string {
  return steps.map(([letter, ...numbers]) => letter + numbers.map(round).join(' ')).join('')
}

function never(mark: never): never {
  throw new Error(`No way to draw ${JSON.stringify(mark)}`)
}
