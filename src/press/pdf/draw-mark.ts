import type { Fill, Mark, Pen } from '../../sheets/index.ts'
import { round } from '../round.ts'
import { seen } from '../seen.ts'
import { drawGroup } from './draw-group.ts'
import { drawText } from './draw-text.ts'
import type { Pdf } from './pdfkit.ts'
import type { Press } from './press.ts'
import { traceLine, tracePath } from './trace.ts'

/** Draws a mark at its place in the page and in the reading order. */
export function drawMark(press: Press, mark: Mark): void {
  const { pdf } = press
  switch (mark.kind) {
    case 'line':
      drawInked(press, mark, () => traceLine(pdf, mark))
      break
    case 'path':
      drawInked(press, mark, () => tracePath(pdf, mark.steps))
      break
    case 'circle':
      drawCircle(press, mark)
      break
    case 'text':
      drawText(press, mark)
      break
    case 'group':
      drawGroup(press, mark, moved => {
        for (const inner of mark.marks) drawMark(moved, inner)
      })
      break
    default:
      never(mark)
  }
}

function drawCircle(press: Press, circle: Extract<Mark, { kind: 'circle' }>): void {
  const [x, y, radius] = [round(circle.at.x), round(circle.at.y), round(circle.radius)]
  // A circle of no radius: SVG draws none, PDF would leave a dot.
  if (radius > 0) drawInked(press, circle, () => press.pdf.circle(x, y, radius))
}

function drawInked(
  { pdf, tags, ink }: Press,
  mark: { readonly pen?: Pen; readonly fill?: Fill },
  trace: () => void,
): void {
  const { pen, fill } = seen(mark)
  if (!pen && !fill) return
  tags.lines(() => {
    pdf.save()
    if (fill) takeFill(pdf, { ...fill, ink: ink(fill.ink) })
    if (pen) takePen(pdf, { ...pen, ink: ink(pen.ink) })
    trace()
    if (pen && fill) pdf.fillAndStroke()
    else if (pen) pdf.stroke()
    else pdf.fill()
    pdf.restore()
  })
}

function takeFill(pdf: Pdf, { ink, opacity = 1 }: Fill): void {
  pdf.fillColor(ink)
  if (opacity !== 1) pdf.fillOpacity(round(opacity))
}

function takePen(pdf: Pdf, { ink, width, dash, cap, join, opacity = 1 }: Pen): void {
  pdf.strokeColor(ink).lineWidth(round(width))
  if (opacity !== 1) pdf.strokeOpacity(round(opacity))
  if (dash) pdf.addContent(`[${dash.map(round).join(' ')}] 0 d`)
  if (cap) pdf.lineCap(cap)
  if (join) pdf.lineJoin(join)
}

function never(mark: never): never {
  throw new Error(`No way to print ${JSON.stringify(mark)}`)
}
