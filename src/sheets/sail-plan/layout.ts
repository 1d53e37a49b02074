import { boundsOf, grown, type Rect, rect, rectsMeet, stretches, stretchMeetsRect } from '../plane.ts'
import type { Plate } from '../plate.ts'
import { clearOfFrame, scalesComposed } from '../scale.ts'
import type { Point } from '../sheet.ts'
import type { TableForm } from './areas-table.ts'
import { type View, viewAt } from './view.ts'

/** A line of the ship, in metres: x to the right and y down, as in a view at 1 : 1000 about the origin. */
export interface Silhouette {
  readonly points: readonly Point[]
  readonly isSail: boolean
}

/** What stands in the plate's corners whatever the scale. */
export interface Furniture {
  /** All of it, the key included. */
  readonly corners: readonly Rect[]
  readonly key: Rect
  /** The table in one column, under the key; and in several, in a strip above the band. */
  readonly column: TableForm
  readonly strip: TableForm
}

/** Where the ship and the table stand. */
export interface Layout {
  readonly view: View
  readonly table: { readonly form: TableForm; readonly at: Point }
}

/** Clear paper between furniture and a sail: less of it where that saves a step of scale. */
const clearOfSails = [30, 24, 16] as const
const clearOfLines = 9
/** Perpendiculars, their letters and the lead stand under the keel. */
export const underKeel = 13.4
const clearOfBand = 4.6
const tableGap = 9
const shiftStep = 3

/**
 * The largest scale at which the ship stands clear of the frame, the cartouche, the key and the
 * table; she is moved from the middle as little as that needs. Undefined where she fits at no scale.
 */
export function layOut(ship: readonly Silhouette[], plate: Plate, furniture: Furniture): Layout | undefined {
  const extent = boundsOf(ship.flatMap(({ points }) => points))
  if (!extent) return undefined
  for (const scale of scalesComposed(plate.enlarged))
    for (const clear of clearOfSails)
      for (const table of tablePlaces(plate, furniture)) {
        const view = viewIn(ship, extent, { plate, furniture, table, scale, clear })
        if (view) return { view, table }
      }
  return undefined
}

interface TablePlace {
  readonly form: TableForm
  readonly at: Point
  readonly room: Rect
  readonly bounds: Rect
}

function tablePlaces({ room }: Plate, { key, column, strip }: Furniture): readonly TablePlace[] {
  const under = { x: key.left, y: key.bottom + tableGap }
  const stripTop = room.bottom - strip.height - 3
  const left = room.left + 11.5
  const place = (form: TableForm, at: Point, within: Rect): TablePlace => ({
    form,
    at,
    room: within,
    bounds: rect(at.x, at.y, at.x + form.width, at.y + form.height),
  })
  // No wider than its words, at the key's right edge, a column leaves more room to a long bowsprit.
  const narrow = { ...column, heading: column.columnWidth }
  const flushRight = Math.max(key.left, key.right - column.columnWidth)
  const fitsUnder = under.y + column.height < room.bottom - 30
  return [
    ...(fitsUnder ? [place(column, under, room)] : []),
    place(strip, { x: left, y: stripTop }, { ...room, bottom: stripTop - 2 }),
    ...(fitsUnder ? [place(narrow, { ...under, x: flushRight }, room)] : []),
  ]
}

interface Trial {
  readonly plate: Plate
  readonly furniture: Furniture
  readonly table: TablePlace
  readonly scale: number
  readonly clear: number
}

/** The view nearest the middle of the room that is clear of everything, or undefined. */
function viewIn(ship: readonly Silhouette[], extent: Rect, trial: Trial): View | undefined {
  const { table, scale } = trial
  const metre = 1000 / scale
  const { room } = table
  const [width, height] = [(extent.right - extent.left) * metre, (extent.bottom - extent.top) * metre]
  const spare = {
    width: room.right - room.left - 2 * clearOfFrame - width,
    height: room.bottom - room.top - clearOfFrame - clearOfBand - underKeel - height,
  }
  if (spare.width < 0 || spare.height < 0) return undefined
  const left = room.left + clearOfFrame + spare.width / 2
  const bottom = room.bottom - clearOfBand - underKeel
  for (const shift of shifts(spare.width / 2))
    for (const lift of [0.3, 0.15, 0]) {
      const origin = {
        x: left + shift - extent.left * metre,
        y: bottom - lift * spare.height - extent.bottom * metre,
      }
      if (isClear(ship, origin, metre, trial)) return viewAt(scale, origin)
    }
  return undefined
}

/** No shift, then a step to the left, a step to the right, and so on as far as there is room. */
function shifts(most: number): readonly number[] {
  const count = Math.floor(most / shiftStep)
  return [0, ...Array.from({ length: count }, (_, i) => (i + 1) * shiftStep).flatMap(by => [-by, by])]
}

function isClear(
  ship: readonly Silhouette[],
  origin: Point,
  metre: number,
  { furniture, table, clear }: Trial,
): boolean {
  const blocks = [...furniture.corners, table.bounds]
  const forSails = blocks.map(block => grown(block, clear))
  const forLines = blocks.map(block => grown(block, clearOfLines))
  return ship.every(({ points, isSail }) => {
    const placed = points.map(({ x, y }) => ({ x: origin.x + x * metre, y: origin.y + y * metre }))
    const bounds = boundsOf(placed)
    const near = (isSail ? forSails : forLines).filter(
      block => bounds && rectsMeet(grown(bounds, 0.01), block),
    )
    return near.every(block => !stretches(placed).some(part => stretchMeetsRect(part, block)))
  })
}
