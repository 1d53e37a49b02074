import type { Fonts } from '../fonts/index.ts'
import type { Identify } from './identify.ts'

/** What every mark of one drawing is drawn with. */
export interface Drawing {
  readonly fonts: Fonts
  readonly identify: Identify
}
