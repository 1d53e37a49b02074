import type { Fill, Pen } from '../sheets/index.ts'
import { round } from './round.ts'

/**
 * Pen and fill as far as they leave ink. A pen of no width draws nothing: left to themselves SVG would agree,
 * and PDF would draw the thinnest line the printer has.
 */
export function seen({ pen, fill }: { readonly pen?: Pen; readonly fill?: Fill }): {
  readonly pen: Pen | undefined
  readonly fill: Fill | undefined
} {
  return { pen: pen && round(pen.width) > 0 ? pen : undefined, fill }
}
