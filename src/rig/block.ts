import type { Span } from '../text/index.ts'
import type { Day } from './day.ts'

/** A block of which the text keeps the number that is cut into it, or the day it was last looked at. */
export interface Block {
  /** 'fore course brace block'; of a loose line, the line's name before it. */
  readonly name: string
  readonly number: string | undefined
  readonly inspected: Day | undefined
  readonly span: Span
}
