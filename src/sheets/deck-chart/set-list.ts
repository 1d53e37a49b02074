import { setWithin } from '../narrow.ts'
import type { Ruler } from '../typeface.ts'
import type { ListGroup, ListRow } from './groups.ts'
import { chartType, listStep } from './type.ts'

/** A row with its name broken to the column, and how far its first baseline lies below the list's upper edge. */
export interface SetRow extends ListRow {
  readonly words: readonly string[]
  readonly baseline: number
}

/** A list set to a column: what it says, and the height it takes. */
export interface SetList {
  readonly group: ListGroup
  readonly width: number
  readonly headingWords: readonly string[]
  readonly rows: readonly SetRow[]
  readonly height: number
}

/** Where name, mark and letter stand, from the edge of the list that is nearer the ship. */
export const listPlaces = { mark: 6, letter: 9.1, name: 11.1 } as const

const headBaseline = 2.6
export const ruleBelowHead = 1
const firstRow = 3.15
const foot = 1.1

/** The width a list asks for when no name of it is broken. */
export function naturalWidth({ rows, heading, code }: ListGroup, ruler: Ruler): number {
  const names = rows.map(row => listPlaces.name + ruler(row.name, row.line ? chartType.line : chartType.free))
  return Math.max(headingStart(code, ruler) + ruler(heading, chartType.railName), ...names) + 0.4
}

/** Where a rail's name begins after its code. */
export const headingStart = (code: string, ruler: Ruler): number =>
  code === '' ? 0 : ruler(code, chartType.code) + 2.2

/** A list broken to a width. */
export function setList(group: ListGroup, width: number, ruler: Ruler): SetList {
  const headingWords = setWithin(
    group.heading,
    width - headingStart(group.code, ruler),
    chartType.railName,
    ruler,
  )
  let baseline = headBaseline + (headingWords.length - 1) * listStep + ruleBelowHead + firstRow
  const rows = group.rows.map((row): SetRow => {
    const words = row.line ? setWithin(row.name, width - listPlaces.name, chartType.line, ruler) : [row.name]
    const set = { ...row, words, baseline }
    baseline += words.length * listStep
    return set
  })
  return { group, width, headingWords, rows, height: baseline - listStep + foot }
}

/** The baseline of a heading's last line, below the list's upper edge. */
export const headingBaseline = (list: SetList): number =>
  headBaseline + (list.headingWords.length - 1) * listStep
