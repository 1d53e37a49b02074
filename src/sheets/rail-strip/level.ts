import { setWithin, widthOf } from '../narrow.ts'
import type { Ruler, Typeface } from '../typeface.ts'
import { pinName, type StripLine } from './content.ts'
import {
  type Cell,
  columnsOf,
  heightsOf,
  type LineCells,
  type PlanOf,
  type StripPlan,
  setBands,
} from './plan.ts'
import { lineStep, type StripType, stripType } from './type.ts'

/** Room kept free at either side of a column. */
const columnPad = 1.6

/** A level cell is led wider than a turned one, since it has the height. */
export const levelStep = (type: Typeface): number => 1.12 * lineStep(type)

/** Above the first capital and below the last baseline of a row. */
export const levelPad = { head: 2.6, foot: 3.4 } as const

/** A strip whose words stand level under their pins, for a rail of so few that they have the room. */
export function levelPlan(of: PlanOf, scale: number): StripPlan {
  const { pins, frame, ruler } = of
  const type = stripType(scale)
  const measure = columnsOf(pins.length, frame, widest(pins.length) * scale)
  const bands = setBands(of, measure, type)
  const cells = pins.map((pin, index) =>
    pin.lines.map(line =>
      cellsOf(line, pinName(line, index, bands), measure.pitch - 2 * columnPad, type, ruler),
    ),
  )
  const heights = heightsOf(frame, scale, bands.length > 0)
  const top = heights.rowsTop
  const room = frame.footRule - top
  const needs = rowNames.map(row => needOf(cells, row, type))
  const needed = needs.reduce((sum, need) => sum + need, 0)
  const spare = (room - needed) / 3
  const [name = 0, does = 0] = needs
  const rows = [top + name + spare, top + name + does + 2 * spare, frame.footRule] as const
  const fits = spare >= 0 && cells.flat().every(cell => isWithin(cell, measure.pitch - 2 * columnPad, ruler))
  return {
    lettering: 'level',
    scale,
    type,
    ...measure,
    bands,
    cells,
    heights: { ...heights, rowHead: levelPad.head + Math.max(0, spare) * 0.35, rows },
    fits,
  }
}

/** The fewer the pins, the more room each may take. */
const widest = (count: number): number => [110, 110, 75, 58][count] ?? 46

const rowNames = ['name', 'does', 'ease'] as const

/** The margin's own words, turned, ask for these heights. */
const least = { name: 16, does: 14.5, ease: 32.5 } as const

function cellsOf(line: StripLine, name: string, measure: number, type: StripType, ruler: Ruler): LineCells {
  const cell = (words: string, face: Typeface): Cell => ({
    lines: setWithin(words, measure, face, ruler),
    type: face,
  })
  return {
    name: cell(name, type.name),
    does: cell(line.does, type.body),
    ease: { lines: easeLines(line.ease, measure, type.ease, ruler), type: type.ease },
  }
}

/** Each kind begins a line of its own, with a comma before the next. */
function easeLines(
  kinds: readonly string[],
  measure: number,
  type: Typeface,
  ruler: Ruler,
): readonly string[] {
  if (kinds.length === 0) return ['nothing']
  const last = kinds.length - 1
  return kinds.flatMap((kind, index) => setWithin(index < last ? `${kind},` : kind, measure, type, ruler))
}

/** The lines of a shared pin stand one under another, half a line apart. */
function needOf(cells: readonly (readonly LineCells[])[], row: keyof LineCells, type: StripType): number {
  const step = levelStep(row === 'name' ? type.name : type.body)
  const most = cells.reduce((lines, pin) => {
    const own = pin.reduce((sum, cell) => sum + cell[row].lines.length, 0)
    return Math.max(lines, own + sharedGap * Math.max(0, pin.length - 1))
  }, 1)
  return Math.max(most * step + levelPad.head + levelPad.foot - 1.5, least[row])
}

/** Between the lines of a shared pin, as a share of a line. */
export const sharedGap = 0.5

const isWithin = (cells: LineCells, measure: number, ruler: Ruler): boolean =>
  rowNames.every(row => widthOf(cells[row].lines, cells[row].type, ruler) <= measure)
