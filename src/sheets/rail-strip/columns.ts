import { functionInk, functionLetter, functionMark, functionWords } from '../function-mark.ts'
import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import type { Group, Mark, Tag } from '../sheet.ts'
import { capHeight, millimetresPerPoint, type Ruler, type Typeface } from '../typeface.ts'
import type { StripLine, StripPin } from './content.ts'
import type { StripFrame } from './frame.ts'
import { freeDash, level } from './head.ts'
import { levelStep, sharedGap } from './level.ts'
import type { Cell, LineCells, SetBand, StripPlan } from './plan.ts'
import { rowPad } from './turned.ts'
import { headType, lineStep } from './type.ts'

/** The bands with their brackets, over the pins they own. */
export function bandMarks(
  { bands, columns, pitch, heights, scale }: StripPlan,
  ruler: Ruler,
): readonly Mark[] {
  const pen = { ink: ink.ink, width: weight.d, join: 'miter' as const }
  return bands.flatMap((band: SetBand): readonly Mark[] => {
    const left = (columns[band.from] ?? 0) - pitch / 2 + 1
    const right = (columns[band.to] ?? 0) + pitch / 2 - 1
    const { bracket } = heights
    const foot = bracket + 1.8 * scale
    return [
      lettered(ruler, { x: (left + right) / 2, y: heights.band }, band.words, band.type, ink.ink, {
        anchor: 'middle',
      }),
      {
        kind: 'line',
        points: [
          { x: left, y: foot },
          { x: left, y: bracket },
          { x: right, y: bracket },
          { x: right, y: foot },
        ],
        pen,
      },
    ]
  })
}

/** The rows' names in the margin, and the rules under the rows. */
export function rowMarks({ heights }: StripPlan, frame: StripFrame, ruler: Ruler): readonly Mark[] {
  const [name, does, ease] = heights.rows
  const x = frame.left + 6.4
  const label = (words: string, foot: number, at = x): Mark =>
    lettered(ruler, { x: at, y: foot - 1.8 }, words, headType.row, ink.rig, { turn: 90 })
  const hasRoom = ruler('ease with it', headType.row) + 1.8 <= ease - does
  const step = lineStep(headType.row)
  const easeLabel = hasRoom
    ? [label('ease with it', ease)]
    : [label('ease ', ease, x - step / 4), label('with it', ease, x + 0.75 * step)]
  const rule = (y: number) =>
    level(frame.left + 1.9, frame.right - 1.9, y, { ink: ink.rule, width: weight.b })
  return [label('name', name), label('does', does), ...easeLabel, rule(name), rule(does)]
}

/** Lines between the columns: solid between sails, dotted between the pins of one. */
export function columnRules(
  { columns, pitch, heights, bands, scale }: StripPlan,
  frame: StripFrame,
): readonly Mark[] {
  return columns.slice(1).map((x, index) => {
    const inBand = bands.some(({ from, to }) => index >= from && index < to)
    const pen = inBand
      ? { ink: ink.faint, width: weight.b, dash: [0.2, 1.2], cap: 'round' as const }
      : { ink: ink.ink, width: weight.b }
    const at = x - pitch / 2
    return {
      kind: 'line',
      points: [
        { x: at, y: heights.plankFoot + 2.4 * scale },
        { x: at, y: frame.footRule },
      ],
      pen,
    }
  })
}

/** One pin's column as an item of the list: its number is drawn with the pin, what follows stands under it. */
export function pinColumn(
  plan: StripPlan,
  index: number,
  pin: StripPin,
  number: readonly Mark[],
  ruler: Ruler,
): Group {
  const x = plan.columns[index] ?? 0
  const parts: readonly Mark[] =
    pin.lines.length === 0
      ? [group({ role: 'LBody' }, freeMarks(plan, x, ruler))]
      : [
          group(
            { role: 'LBody' },
            pin.lines.map((line, at) => lineMarks(plan, pinPlace(plan, pin, index, at), line, ruler)),
          ),
        ]
  return {
    kind: 'group',
    id: pin.place.address,
    title: titleOf(pin),
    tag: { role: 'LI' },
    marks: [group({ role: 'Lbl' }, number), ...parts],
  }
}

const group = (tag: Tag, marks: readonly Mark[]): Group => ({ kind: 'group', tag, marks })

const titleOf = ({ place, lines }: StripPin): string =>
  `${place.rail} ${place.pin}: ${lines.length === 0 ? 'free' : lines.map(line => line.nameAlone).join(', ')}`

interface PinPlace {
  /** The middle of the line's own part of the column. */
  readonly x: number
  readonly width: number
  readonly cells: LineCells
  /** How many level lines of type stand above, in each row, on a shared pin. */
  readonly above: LinesAbove
}

type LinesAbove = Readonly<Record<keyof LineCells, number>>

function pinPlace(plan: StripPlan, pin: StripPin, index: number, at: number): PinPlace {
  const count = pin.lines.length
  const width = plan.pitch / count
  const middle = plan.columns[index] ?? 0
  const own = plan.cells[index] ?? []
  const cells = own[at]
  const above = (row: keyof LineCells) =>
    own.slice(0, at).reduce((sum, before) => sum + before[row].lines.length + sharedGap, 0)
  return {
    x: middle + (at - (count - 1) / 2) * width,
    width,
    cells: cells ?? { name: noCell(plan), does: noCell(plan), ease: noCell(plan) },
    above: { name: above('name'), does: above('does'), ease: above('ease') },
  }
}

const noCell = (plan: StripPlan): Cell => ({ lines: [], type: plan.type.body })

/** Mark, letter, name, deed and what is eased of one line. */
function lineMarks(plan: StripPlan, place: PinPlace, line: StripLine, ruler: Ruler): Group {
  const { deed } = line
  const { heights, type, scale } = plan
  const { cells, x } = place
  const k = Math.min(3 * scale, place.width / 2.6)
  const tones = { name: ink.ink, does: ink.ink, ease: line.ease.length === 0 ? ink.rig : ink.ink }
  const middle = (row: keyof LineCells): CellPlace => ({
    row,
    x,
    across: plan.columns.find(column => Math.abs(column - x) <= plan.pitch / 2) ?? x,
    above: place.above[row],
  })
  return {
    kind: 'group',
    id: `line.${line.address}`,
    title: line.nameAlone,
    marks: [
      ...(deed === undefined
        ? []
        : [
            ...functionMark(deed, { x, y: heights.mark }, k),
            group({ role: 'Span', actual: functionWords[deed] }, [
              lettered(
                ruler,
                { x, y: heights.letter },
                functionLetter[deed],
                type.letter,
                functionInk(deed),
                { anchor: 'middle' },
              ),
            ]),
          ]),
      group(
        { role: 'Span', actual: line.nameAlone },
        cellMarks(plan, middle('name'), cells.name, tones.name, ruler),
      ),
      group(
        { role: 'Span', actual: line.does },
        cellMarks(plan, middle('does'), cells.does, tones.does, ruler),
      ),
      group(
        { role: 'Span', actual: `ease with it: ${line.ease.join(', ') || 'nothing'}` },
        cellMarks(plan, middle('ease'), cells.ease, tones.ease, ruler),
      ),
    ],
  }
}

interface CellPlace {
  readonly row: keyof LineCells
  readonly x: number
  /** The middle of the whole column: level words of a shared pin stand under it one after another. */
  readonly across: number
  readonly above: number
}

function cellMarks(
  plan: StripPlan,
  place: CellPlace,
  cell: Cell,
  tone: string,
  ruler: Ruler,
): readonly Mark[] {
  return plan.lettering === 'turned'
    ? turnedMarks(plan, place, cell, tone, ruler)
    : levelMarks(plan, place, cell, tone, ruler)
}

function turnedMarks(
  { heights }: StripPlan,
  { row, x }: CellPlace,
  { lines, type }: Cell,
  tone: string,
  ruler: Ruler,
): readonly Mark[] {
  const foot = heights.rows[rowIndex[row]] - rowPad.foot
  const step = lineStep(type)
  // Several lines fill the column, so that the tails of the last count; one line stands on its pin's axis.
  const tails = lines.length > 1 ? descender(type) / 2 : 0
  const first = x + capHeight(type) / 2 - tails - ((lines.length - 1) / 2) * step
  return lines.map((words, index) =>
    lettered(ruler, { x: first + index * step, y: foot }, words, type, tone, { turn: 90 }),
  )
}

function levelMarks(
  { heights }: StripPlan,
  { row, across, above }: CellPlace,
  { lines, type }: Cell,
  tone: string,
  ruler: Ruler,
): readonly Mark[] {
  const top = row === 'name' ? heights.rowsTop : (heights.rows[rowIndex[row] - 1] ?? heights.rowsTop)
  const first = top + heights.rowHead + capHeight(type) + above * levelStep(type)
  return lines.map((words, index) =>
    lettered(ruler, { x: across, y: first + index * levelStep(type) }, words, type, tone, {
      anchor: 'middle',
    }),
  )
}

/** How far g and y reach below the baseline: a fifth of the size. */
const descender = ({ size }: Typeface): number => 0.2 * size * millimetresPerPoint

const rowIndex = { name: 0, does: 1, ease: 2 } as const

/** A free place says so, and a dashed line tells that its column is empty on purpose. */
function freeMarks(plan: StripPlan, x: number, ruler: Ruler): readonly Mark[] {
  const { heights, type } = plan
  if (plan.lettering === 'level') {
    return levelMarks(
      plan,
      { row: 'name', x, across: x, above: 0 },
      { lines: ['free'], type: type.free },
      ink.rig,
      ruler,
    )
  }
  const foot = heights.rows[0] - rowPad.foot
  const top = foot - ruler('free', type.free) - 3
  return [
    {
      kind: 'line',
      points: [
        { x, y: heights.mark - 3 * plan.scale },
        { x, y: top },
      ],
      pen: { ink: ink.faint, width: weight.b, dash: freeDash },
    },
    lettered(ruler, { x: x + 1.6 * plan.scale, y: foot }, 'free', type.free, ink.rig, { turn: 90 }),
  ]
}
