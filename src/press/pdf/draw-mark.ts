import type { Fill, Group, Mark, PathStep, Pen } from '../../sheets/index.ts'
import type { Fonts } from '../fonts/index.ts'
import { round } from '../round.ts'
import { drawText } from './draw-text.ts'
import type { Pdf } from './pdfkit.ts'
import type { Structure } from './structure.ts'

/** What every mark is drawn with. */
export interface Press {
  readonly pdf: Pdf
  readonly fonts: Fonts
  readonly tags: Structure
  /** The name of each page's destination, by the page's id. */
  readonly destinations: ReadonlyMap<string, string>
}

/** Draws a mark at its place in the page and in the reading order. */
export function drawMark(press: Press, mark: Mark): void {
  const { pdf } = press
  switch (mark.kind) {
    case 'line':
      inked(press, mark, () => traceLine(pdf, mark))
      break
    case 'path':
      inked(press, mark, () => tracePath(pdf, mark.steps))
      break
    case 'circle':
      inked(press, mark, () => pdf.circle(round(mark.at.x), round(mark.at.y), round(mark.radius)))
      break
    case 'text':
      drawText(press, mark)
      break
    case 'group':
      drawGroup(press, mark)
      break
    default:
      never(mark)
  }
}

/** Traces a path without inking it. */
export function tracePath(pdf: Pdf, steps: readonly PathStep[]): void {
  for (const step of steps) {
    switch (step[0]) {
      case 'M':
        pdf.moveTo(round(step[1]), round(step[2]))
        break
      case 'L':
        pdf.lineTo(round(step[1]), round(step[2]))
        break
      case 'C':
        pdf.bezierCurveTo(...(step.slice(1).map(n => round(n as number)) as Six))
        break
      case 'Z':
        pdf.closePath()
        break
      default:
        never(step)
    }
  }
}

type Six = [number, number, number, number, number, number]

function traceLine(pdf: Pdf, { points, closed = false }: Extract<Mark, { kind: 'line' }>): void {
  points.forEach(({ x, y }, index) => {
    if (index === 0) pdf.moveTo(round(x), round(y))
    else pdf.lineTo(round(x), round(y))
  })
  if (closed) pdf.closePath()
}

function drawGroup(press: Press, group: Group): void {
  const { pdf, tags } = press
  const inside = () => {
    for (const mark of group.marks) drawMark(press, mark)
  }
  const moved = () => {
    if (!group.offset && !group.clip && group.opacity === undefined) return inside()
    tags.endPage()
    pdf.save()
    if (group.offset) pdf.transform(1, 0, 0, 1, round(group.offset.x), round(group.offset.y))
    if (group.clip) {
      tracePath(pdf, group.clip)
      pdf.clip()
    }
    inside()
    tags.endPage()
    pdf.restore()
  }
  if (group.tag) tags.within(group.tag, () => undefined, moved)
  else moved()
}

function inked(
  { pdf, tags }: Press,
  { pen, fill }: { readonly pen?: Pen; readonly fill?: Fill },
  trace: () => void,
): void {
  if (!pen && !fill) return
  tags.draw(() => {
    pdf.save()
    if (fill) pdf.fillColor(fill.ink).fillOpacity(fill.opacity ?? 1)
    if (pen) takePen(pdf, pen)
    trace()
    if (pen && fill) pdf.fillAndStroke()
    else if (pen) pdf.stroke()
    else pdf.fill()
    pdf.restore()
  })
}

function takePen(pdf: Pdf, { ink, width, dash, cap, join, opacity = 1 }: Pen): void {
  pdf.strokeColor(ink).strokeOpacity(opacity).lineWidth(round(width))
  if (dash) pdf.addContent(`[${dash.map(round).join(' ')}] 0 d`)
  if (cap) pdf.lineCap(cap)
  if (join) pdf.lineJoin(join)
}

function never(mark: never): never {
  throw new Error(`No way to draw ${JSON.stringify(mark)}`)
}
