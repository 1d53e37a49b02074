import type { PlacedLabel } from '../label-place.ts'
import type { Point } from '../sheet.ts'
import type { NameForm } from './name-forms.ts'
import type { SailShape } from './sail-shape.ts'

/** A sail's name at its place; `leader` leads from the sail to a name that stands in the sky. */
export interface PlacedName extends PlacedLabel<NameForm> {
  readonly drawn: SailShape
  readonly leader: readonly Point[] | undefined
}
