import type { Container, Element } from '@svgdotjs/svg.js'
import type { Fill, Mark, Pen } from '../../sheets/index.ts'
import { hex } from '../ink.ts'
import { round } from '../round.ts'
import { seen } from '../seen.ts'
import { drawGroup } from './draw-group.ts'
import { drawText } from './draw-text.ts'
import type { Drawing } from './drawing.ts'
import { pathData } from './path-data.ts'

/** Draws a mark into its parent, in the order of the sheet. */
export function drawMark(parent: Container, mark: Mark, drawing: Drawing): void {
  switch (mark.kind) {
    case 'line':
      drawInked(drawLine(parent, mark), mark, drawing)
      break
    case 'path':
      drawInked(parent.element('path').attr({ d: pathData(mark.steps) }), mark, drawing)
      break
    case 'circle':
      drawInked(drawCircle(parent, mark), mark, drawing)
      break
    case 'text':
      drawText(parent, mark, drawing)
      break
    case 'group':
      drawGroup(parent, mark, drawing, g => {
        for (const inner of mark.marks) drawMark(g, inner, drawing)
      })
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

function drawInked(
  element: Element,
  mark: { readonly id?: string; readonly pen?: Pen; readonly fill?: Fill },
  { identify }: Drawing,
): void {
  const { pen, fill } = seen(mark)
  if (mark.id !== undefined) element.attr({ id: identify(mark.id) })
  element.attr({ fill: fill ? hex(fill.ink) : 'none' })
  if (fill?.opacity !== undefined) element.attr({ 'fill-opacity': `${round(fill.opacity)}` })
  if (pen) takePen(element, pen)
}

function takePen(element: Element, { ink, width, dash, cap, join, opacity }: Pen): void {
  element.attr({ stroke: hex(ink), 'stroke-width': `${round(width)}` })
  if (dash) element.attr({ 'stroke-dasharray': dash.map(round).join(' ') })
  if (cap) element.attr({ 'stroke-linecap': cap })
  if (join) element.attr({ 'stroke-linejoin': join })
  if (opacity !== undefined) element.attr({ 'stroke-opacity': `${round(opacity)}` })
}

function never(mark: never): never {
  throw new Error(`No way to draw ${JSON.stringify(mark)}`)
}
