import type { PathStep } from '../../sheets/index.ts'
import { round } from '../round.ts'

/** A path as SVG writes it. */
export function pathData(steps: readonly PathStep[]): string {
  return steps.map(([letter, ...numbers]) => letter + numbers.map(round).join(' ')).join('')
}
