import type { Evolutions } from '../../evolve/index.ts'
import type { Figures } from '../../reckon/index.ts'
import type { Rig, Station } from '../../rig/index.ts'
import type { Setting } from '../setting.ts'
import type { StationLines } from './station-lines.ts'

/** What every page of a station's handbook is drawn from. */
export interface Book {
  readonly rig: Rig
  readonly figures: Figures
  /** How every sail is set and doused: reckoned once for the book. */
  readonly evolutions: Evolutions
  readonly station: Station
  readonly setting: Setting
  /** Which sails and lines are the station's. */
  readonly lines: StationLines
  /**
   * The number of the page that has this key or also holds it; of several, the first. The book is laid out twice, as books with page references are:
   * in the first round no page has a number yet. So no page may lay out more or less for knowing one.
   */
  readonly pageOf: (key: string) => number | undefined
  /** How many pages the book has; undefined in the first round. */
  readonly pageCount: number | undefined
}
