import type { Mark, PathStep } from '../../sheets/index.ts'
import { round } from '../round.ts'
import type { Pdf } from './pdfkit.ts'

/** Traces a path without inking it. */
export function tracePath(pdf: Pdf, steps: readonly PathStep[]): void {
  for (const [letter, ...numbers] of steps) {
    const [a = 0, b = 0, c = 0, d = 0, x = 0, y = 0] = numbers.map(round)
    if (letter === 'M') pdf.moveTo(a, b)
    else if (letter === 'L') pdf.lineTo(a, b)
    else if (letter === 'C') pdf.bezierCurveTo(a, b, c, d, x, y)
    else pdf.closePath()
  }
}

/** Traces a run of straight stretches without inking it. */
export function traceLine(pdf: Pdf, { points, closed = false }: Extract<Mark, { kind: 'line' }>): void {
  points.forEach(({ x, y }, index) => {
    if (index === 0) pdf.moveTo(round(x), round(y))
    else pdf.lineTo(round(x), round(y))
  })
  if (closed) pdf.closePath()
}
