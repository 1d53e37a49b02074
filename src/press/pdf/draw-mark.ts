import type { Fill, Mark, Pen } from '../../sheets/index.ts'
import { round } from '../round.ts'
import { seen } from '../seen.ts'
import { drawGroup } from './draw-group.ts'
import { drawText } from './draw-text.ts'
import type { Press } from './press.ts'
import { tracedCircle, tracedLine, tracedPath } from './trace.ts'

/** Draws a mark at its place in the page and in the reading order. */
export function drawMark(press: Press, mark: Mark): void {
  switch (mark.kind) {
    case 'line':
      drawInked(press, mark, () => tracedLine(mark))
      break
    case 'path':
      drawInked(press, mark, () => tracedPath(mark.steps))
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
  if (radius > 0) drawInked(press, circle, () => tracedCircle(x, y, radius))
}

function drawInked(
  { pdf, tags, ink }: Press,
  mark: { readonly pen?: Pen; readonly fill?: Fill },
  traced: () => string,
): void {
  const { pen, fill } = seen(mark)
  if (!pen && !fill) return
  tags.lines(() => {
    pdf.addContent('q')
    if (fill?.opacity !== undefined) pdf.fillOpacity(round(fill.opacity))
    if (pen?.opacity !== undefined) pdf.strokeOpacity(round(pen.opacity))
    const filled = fill ? `${ink(fill.ink)} rg\n` : ''
    const stroked = pen ? `${ink(pen.ink)} RG ${penOperators(pen)}\n` : ''
    const painted = pen && fill ? 'B' : pen ? 'S' : 'f'
    pdf.addContent(`${filled}${stroked}${traced()}\n${painted}\nQ`)
  })
}

function penOperators({ width, dash, cap, join }: Pen): string {
  return [
    `${round(width)} w`,
    ...(dash ? [`[${dash.map(round).join(' ')}] 0 d`] : []),
    ...(cap ? [`${caps[cap]} J`] : []),
    ...(join ? [`${joins[join]} j`] : []),
  ].join(' ')
}

const caps = { butt: 0, round: 1, square: 2 } as const
const joins = { miter: 0, round: 1, bevel: 2 } as const

function never(mark: never): never {
  throw new Error(`No way to print ${JSON.stringify(mark)}`)
}
