import type { Ruler, Typeface } from '../typeface.ts'
import type { Band, StripPin } from './content.ts'
import type { StripFrame } from './frame.ts'
import type { StripType } from './type.ts'

/** Words of one cell as they are set, line under line. */
export interface Cell {
  readonly lines: readonly string[]
  readonly type: Typeface
}

/** The three cells of a line: its name, what hauling it does, what is eased with it. */
export interface LineCells {
  readonly name: Cell
  readonly does: Cell
  readonly ease: Cell
}

/** A band as it is set over its pins. */
export interface SetBand extends Band {
  readonly type: Typeface
}

/** Heights on the sheet at which the parts of a strip stand. */
export interface Heights {
  readonly band: number
  readonly bracket: number
  readonly plankTop: number
  readonly plankFoot: number
  readonly mark: number
  readonly letter: number
  readonly rowsTop: number
  /** Kept free above the words of a row, where they stand level. */
  readonly rowHead: number
  /** The feet of the rows of name, deed and what is eased. */
  readonly rows: readonly [number, number, number]
}

/** A strip laid out: every size and place of it, blank or filled. */
export interface StripPlan {
  readonly lettering: 'level' | 'turned'
  readonly scale: number
  readonly type: StripType
  readonly pitch: number
  /** The middle of each pin's column. */
  readonly columns: readonly number[]
  readonly bands: readonly SetBand[]
  /** For each pin, the cells of each of its lines. */
  readonly cells: readonly (readonly LineCells[])[]
  readonly heights: Heights
  /** False where words stand out of their cells: the next plan is tried, or the rail divided. */
  readonly fits: boolean
}

/** What a plan is made from. */
export interface PlanOf {
  readonly pins: readonly StripPin[]
  readonly bands: readonly Band[]
  readonly frame: StripFrame
  readonly ruler: Ruler
}

/** Columns side by side about the middle of the sheet, no wider than `widest`. */
export function columnsOf(
  count: number,
  frame: StripFrame,
  widest: number,
): { pitch: number; columns: readonly number[] } {
  const room = frame.columnsRight - frame.columnsLeft
  const pitch = Math.min(widest, room / Math.max(1, count))
  const whole = pitch * count
  const left = Math.max(frame.columnsLeft, Math.min(frame.width / 2 - whole / 2, frame.columnsRight - whole))
  return { pitch, columns: Array.from({ length: count }, (_, index) => left + (index + 0.5) * pitch) }
}

/** Heights of the parts above the rows. A strip without bands stands that much higher. */
export function heightsOf(
  frame: StripFrame,
  scale: number,
  hasBands: boolean,
): Omit<Heights, 'rows' | 'rowHead'> {
  const down = (millimetres: number) => frame.endsRule + (millimetres - (hasBands ? 0 : 9)) * scale
  return {
    band: down(8),
    bracket: down(10.7),
    plankTop: down(28.6),
    plankFoot: down(41.6),
    mark: down(50),
    letter: down(59.5),
    rowsTop: down(62.7),
  }
}

/**
 * Bands whose words find room over their pins, between the words of the bands beside them; each in the largest
 * face that does. A band that finds none is left out, and its pins carry their whole names.
 */
export function setBands(
  { bands, frame, ruler }: PlanOf,
  { pitch, columns }: { pitch: number; columns: readonly number[] },
  type: StripType,
): readonly SetBand[] {
  const middle = ({ from, to }: Band) => ((columns[from] ?? 0) + (columns[to] ?? 0)) / 2
  const smallest = (band: Band) => Math.min(...type.bands.map(each => ruler(band.words, each)))
  let free = frame.columnsLeft
  return bands.flatMap((band, index) => {
    const after = bands[index + 1]
    const until = after ? middle(after) - smallest(after) / 2 - pitch / 5 : frame.columnsRight
    const room = 2 * Math.min(middle(band) - free, until - middle(band))
    const fitting = type.bands.find(each => ruler(band.words, each) <= room)
    if (!fitting) return []
    free = middle(band) + ruler(band.words, fitting) / 2 + pitch / 5
    return [{ ...band, type: fitting }]
  })
}
