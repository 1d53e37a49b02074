import type { Metres } from '../measure/index.ts'
import type { Span } from '../text/index.ts'

/** A thing on deck, as a rectangle in plan with the height of its top: hatch, house, boat, wheel. */
export interface DeckThing {
  /** 'fore hatch'; the two of a mirrored pair are two things with the same name. */
  readonly name: string
  readonly label: string
  /** 'hatch', 'house', 'companionway', 'boat', 'raised deck', 'machinery', 'helm', as said or from its last word. */
  readonly kind: string
  readonly x0: Metres
  readonly x1: Metres
  readonly y0: Metres
  readonly y1: Metres
  readonly top: Metres
  readonly span: Span
}
