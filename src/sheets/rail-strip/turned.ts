import { cutTo, narrowest, widthOf } from '../narrow.ts'
import type { Ruler, Typeface } from '../typeface.ts'
import { pinName, type StripLine } from './content.ts'
import type { StripFrame } from './frame.ts'
import {
  type Cell,
  columnsOf,
  type Heights,
  heightsOf,
  type LineCells,
  type PlanOf,
  type StripPlan,
  setBands,
} from './plan.ts'
import { lineStep, type StripType, stripType } from './type.ts'

/** Room kept free at the foot and at the head of a row, beside the words. */
export const rowPad = { foot: 1.8, head: 0.6 } as const

/** The rows as they stand wherever the words allow it, so that strips hang alike: shares of the rows' height. */
const usual = { name: 0.398, does: 0.301, ease: 0.301 } as const

/**
 * A strip whose words are turned to read upward, for rails of many pins: a column holds as many lines as its
 * width takes. Names keep one line while they can; deeds and what is eased are told in short only where they must be.
 */
export function turnedPlan(of: PlanOf, scale: number): StripPlan {
  const { pins, frame, ruler } = of
  const type = stripType(scale)
  const measure = columnsOf(pins.length, frame, 24 * scale)
  const bands = setBands(of, measure, type)
  const fixed = heightsOf(frame, scale, true)
  const room = frame.footRule - fixed.rowsTop
  const wordings = pins.map((pin, index) =>
    pin.lines.map(line =>
      wordingsOf(line, pinName(line, index, bands), measure.pitch / pin.lines.length, type, ruler),
    ),
  )
  const needs = needsWithin(room, wordings.flat(), ruler)
  const heights = { ...fixed, rowHead: 0, rows: rowFeet(needs, room, frame) }
  const fits = heightOf(needs) <= room + 0.01 && isWideEnough(of, measure.pitch, type)
  const cells = wordings.map(pin => pin.map(line => fullestCells(line, heights, ruler)))
  return { lettering: 'turned', scale, type, ...measure, bands, cells, heights, fits }
}

/** The ways a cell may be worded and set, the fullest first; the last is the briefest. */
type Wordings = Readonly<Record<keyof LineCells, readonly [Cell, ...Cell[]]>>

/** The longest name that is still given one line, for a body of 15 pt. */
const longestOneLine = 38.6

function wordingsOf(line: StripLine, name: string, pitch: number, type: StripType, ruler: Ruler): Wordings {
  const set = (words: string, face: Typeface) => turnedCell(words, pitch, face, ruler)
  const oneLine: Cell = { lines: [name], type: type.name }
  const several = set(name, type.nameInLines)
  const isLong = ruler(name, type.name) > longestOneLine * (type.name.size / 18)
  const isShorter = widthOf(several.lines, several.type, ruler) < ruler(name, type.name)
  const full: readonly [Cell, ...Cell[]] = !isShorter ? [oneLine] : isLong ? [several] : [oneLine, several]
  const inShort = name === line.nameAlone ? line.nameInShort : undefined
  return {
    name: inShort ? [...full, set(inShort, type.nameInLines)] : full,
    does: [set(line.does, type.body), set(line.does.replaceAll(' the ', ' '), type.body)],
    ease: easeWordings(line, pitch, type, ruler),
  }
}

function easeWordings(
  line: StripLine,
  pitch: number,
  { ease: type }: StripType,
  ruler: Ruler,
): readonly [Cell, ...Cell[]] {
  if (line.ease.length === 0) return [{ lines: ['nothing'], type }]
  const running = turnedCell(line.ease.join(', '), pitch, type, ruler)
  const apart: Cell = { lines: line.ease, type }
  const full = line.ease.length <= linesIn(pitch, type) ? apart : running
  const inShort = turnedCell(line.easeInShort, pitch, type, ruler)
  const isShorter = widthOf(inShort.lines, type, ruler) < widthOf(full.lines, type, ruler)
  return isShorter ? [full, inShort] : [full]
}

const turnedCell = (words: string, pitch: number, type: Typeface, ruler: Ruler): Cell => ({
  lines: narrowest(words, linesIn(pitch, type), type, ruler),
  type,
})

const linesIn = (pitch: number, type: Typeface): number => Math.max(1, Math.floor(pitch / lineStep(type)))

type Needs = Readonly<Record<keyof LineCells, number>>

const heightOf = ({ name, does, ease }: Needs): number => name + does + ease

/** What the rows need, by the fullest wording that finds room: names give way last. */
function needsWithin(room: number, lines: readonly Wordings[], ruler: Ruler): Needs {
  const tries = [least, leastInTwo].flatMap(margin => {
    const pick = (row: keyof LineCells, brief: boolean) =>
      needOf(
        lines.map(line => (brief ? line[row].at(-1) : line[row][0])),
        row,
        ruler,
        margin,
      )
    const each = [false, true]
    return each.flatMap(name =>
      each.flatMap(ease =>
        each.map(
          (does): Needs => ({ name: pick('name', name), does: pick('does', does), ease: pick('ease', ease) }),
        ),
      ),
    )
  })
  return tries.find(needed => heightOf(needed) <= room) ?? (tries.at(-1) as Needs)
}

/** A row is never shorter than the words that name it in the margin; the last may stand there in two lines. */
const least = { name: 14, does: 12, ease: 29.8 } as const
const leastInTwo = { ...least, ease: 16.5 } as const

function needOf(
  cells: readonly (Cell | undefined)[],
  row: keyof LineCells,
  ruler: Ruler,
  least: Needs,
): number {
  const longest = cells.reduce(
    (most, cell) => Math.max(most, cell ? widthOf(cell.lines, cell.type, ruler) : 0),
    0,
  )
  return Math.max(longest, least[row]) + rowPad.foot + rowPad.head
}

/** Each cell in the fullest wording its row holds; where none fits, words end in an ellipsis. */
function fullestCells(line: Wordings, { rowsTop, rows }: Heights, ruler: Ruler): LineCells {
  const fullest = (wordings: readonly [Cell, ...Cell[]], height: number): Cell => {
    const room = height - rowPad.foot - rowPad.head + 0.01
    const fitting = wordings.find(({ lines, type }) => widthOf(lines, type, ruler) <= room)
    if (fitting) return fitting
    const { lines, type } = wordings.at(-1) ?? wordings[0]
    return { lines: lines.map(words => cutTo(room, words, type, ruler)), type }
  }
  const inFew = (wordings: readonly [Cell, ...Cell[]], height: number) =>
    inFewLines(fullest(wordings, height), height - rowPad.foot - rowPad.head, ruler)
  return {
    name: inFew(line.name, rows[0] - rowsTop),
    does: inFew(line.does, rows[1] - rows[0]),
    ease: fullest(line.ease, rows[2] - rows[1]),
  }
}

/** Words broken into as few lines as the row's height allows, two at the least: they were tried in as many as go side by side. */
function inFewLines(cell: Cell, room: number, ruler: Ruler): Cell {
  const words = cell.lines.join(' ')
  for (let most = 2; most < cell.lines.length; most += 1) {
    const lines = narrowest(words, most, cell.type, ruler)
    if (widthOf(lines, cell.type, ruler) <= room) return { ...cell, lines }
  }
  return cell
}

function rowFeet(needs: Needs, room: number, { footRule }: StripFrame): [number, number, number] {
  const top = footRule - room
  const keeps = (Object.keys(usual) as (keyof Needs)[]).every(row => needs[row] <= usual[row] * room + 0.01)
  if (keeps) return [top + usual.name * room, top + (usual.name + usual.does) * room, footRule]
  const spare = Math.max(0, room - needs.name - needs.does - needs.ease) / 3
  const name = top + needs.name + spare
  return [name, name + needs.does + spare, footRule]
}

/** A pin that carries several lines needs a line of type for each. */
function isWideEnough({ pins }: PlanOf, pitch: number, type: StripType): boolean {
  const most = pins.reduce((lines, pin) => Math.max(lines, pin.lines.length), 1)
  return pitch / most >= lineStep(type.body) && pitch >= 2 * lineStep(type.body)
}
