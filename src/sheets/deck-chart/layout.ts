import type { Rig, Side } from '../../rig/index.ts'
import { type HullPlan, hullPlan } from '../hull-plan.ts'
import type { PaperFamily } from '../imprint.ts'
import { scalesComposed } from '../scale.ts'
import type { Point } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import { type ChartPaper, chartPapers, fromRoll } from './chart-paper.ts'
import { type ListGroup, listGroups } from './groups.ts'
import { spaced } from './isotonic.ts'
import { naturalWidth, type SetList, setList } from './set-list.ts'

/** A list where it stands: its upper edge, and the x of its edge nearer the ship. */
export interface PlacedList extends SetList {
  readonly top: number
  readonly edge: number
}

/** A deck chart laid out. */
export interface ChartLayout {
  readonly paper: ChartPaper
  /** As composed: 150 for 1 : 150; undefined where nothing is drawn to scale. */
  readonly scale: number | undefined
  readonly hull: HullPlan | undefined
  /** From metres aft and to starboard to the sheet. */
  readonly onSheet: (x: number, y: number) => Point
  /** x of the line at which leaders leave the level, to starboard of the middle. */
  readonly leaderTurn: number
  /** Left edge of all that stands on the sheet; its right edge mirrors it. */
  readonly left: number
  /** Upper edge of key and title column, which stand at the foot of the outer columns. */
  readonly footTop: number
  readonly lists: readonly PlacedList[]
  /** The x at which the words PORT and STARBOARD begin, from the middle. */
  readonly sideWords: number
}

const topOfLists = 37
const topOfPlan = 37
const columnGap = 2
const leastSlant = 8.5
const mostSlant = 24
const footHeight = 66
const footWidth = 36
const narrowInner = 42
/** Between the lists; the narrower only where the wider does not fit. */
const listGaps = [2, 1.2] as const

/** The chart on the smallest paper that holds it, at the largest scale. */
export function chartLayout(rig: Rig, family: PaperFamily, ruler: Ruler, enlarged = 1): ChartLayout {
  const groups = listGroups(rig)
  const hull = hullPlan(rig)
  const papers = chartPapers(family, enlarged)
  for (const paper of papers) {
    const layout = onPaper(paper, { groups, hull, ruler })
    if (layout) return layout
  }
  const last = papers.at(-1) ?? papers[0]
  const rows = groups.reduce((sum, group) => sum + 2 * group.rows.length + 4, 0)
  const roll = fromRoll(last, rows * 8 + 400)
  return onPaper(roll, { groups, hull, ruler }) ?? emptyLayout(roll, hull)
}

interface Content {
  readonly groups: readonly ListGroup[]
  readonly hull: HullPlan | undefined
  readonly ruler: Ruler
}

function onPaper(paper: ChartPaper, content: Content): ChartLayout | undefined {
  if (!content.hull) return atScale(paper, undefined, content)
  for (const scale of scalesComposed(paper.enlarged)) {
    const layout = atScale(paper, scale, content)
    if (layout) return layout
  }
  return undefined
}

function atScale(
  paper: ChartPaper,
  scale: number | undefined,
  { groups, hull, ruler }: Content,
): ChartLayout | undefined {
  const millimetres = scale === undefined ? 0 : 1000 / scale
  const left = paper.margin + 4.6
  const planHeight = hull ? (hull.taffrail - hull.stem) * millimetres : 0
  const room = paper.height - paper.margin - 8.5 - topOfPlan
  if (planHeight > room) return undefined
  const widths = columnWidths(
    paper.width / 2 - left,
    (hull?.halfBeam ?? 0) * millimetres + 1.4,
    groups,
    ruler,
  )
  if (!widths) return undefined
  const stemY = topOfPlan + (room - planHeight) / 2
  const middle = paper.width / 2
  const onSheet = (x: number, y: number): Point => ({
    x: middle + y * millimetres,
    y: stemY + (x - (hull?.stem ?? 0)) * millimetres,
  })
  const footTop = paper.height - paper.margin - 6 - footHeight
  const frame = { paper, footTop, wants: (x: number) => onSheet(x, 0).y }
  const lists = placed(groups, widths, frame, ruler)
  if (!lists) return undefined
  return {
    paper,
    scale,
    hull,
    onSheet,
    leaderTurn: widths.turn,
    left,
    footTop,
    lists,
    sideWords: widths.inner > 0 ? widths.innerEdge : widths.outerEdge,
  }
}

interface ColumnWidths {
  /** From the middle of the sheet: where leaders turn, and the edges of both columns nearer the ship. */
  readonly turn: number
  readonly innerEdge: number
  readonly outerEdge: number
  readonly inner: number
  readonly outer: number
}

/** The columns beside the ship; undefined where they are too narrow for the names. */
function columnWidths(
  half: number,
  turn: number,
  groups: readonly ListGroup[],
  ruler: Ruler,
): ColumnWidths | undefined {
  const natural = (column: 'inner' | 'outer') =>
    groups
      .filter(group => group.column === column)
      .reduce((most, group) => Math.max(most, naturalWidth(group, ruler)), 0)
  const inner = natural('inner')
  const slant = inner > 0 ? leastSlant : 6
  const spare = half - turn - slant - (inner > 0 ? columnGap : 0)
  const outer = Math.max(footWidth + 1, Math.min(natural('outer'), 52, spare - inner))
  const given = Math.min(inner, spare - outer)
  if (given < Math.min(inner, narrowInner)) return undefined
  const innerEdge = turn + Math.min(mostSlant, half - turn - outer - columnGap - given)
  return { turn, innerEdge, outerEdge: half - outer, inner: given, outer }
}

interface Frame {
  readonly paper: ChartPaper
  readonly footTop: number
  readonly wants: (x: number) => number
}

function placed(
  groups: readonly ListGroup[],
  widths: ColumnWidths,
  frame: Frame,
  ruler: Ruler,
): readonly PlacedList[] | undefined {
  const { paper } = frame
  const set = (column: 'inner' | 'outer') =>
    groups
      .filter(group => group.column === column)
      .map(group => setList(group, column === 'inner' ? widths.inner : widths.outer, ruler))
  const inner = stacked(set('inner'), frame, paper.height - paper.margin - 5)
  const outer = stacked(set('outer'), frame, frame.footTop - 3)
  if (!inner || !outer) return undefined
  const middle = paper.width / 2
  const edge = ({ side, column }: ListGroup) => {
    const from = column === 'inner' ? widths.innerEdge : widths.outerEdge
    return side === 'port' ? middle - from : middle + from
  }
  return [...inner, ...outer].map(({ list, top }) => ({ ...list, top, edge: edge(list.group) }))
}

interface Slot {
  readonly lists: readonly SetList[]
  readonly x: number
}

/** Lists one below another in ship order, mirrored ones at one height; each side by itself where that takes too much room. */
function stacked(
  lists: readonly SetList[],
  frame: Frame,
  to: number,
): readonly { list: SetList; top: number }[] | undefined {
  const together = down(slotsOf(lists), frame, to)
  if (together && keepsOrder(together)) return together
  const apart = (['port', 'starboard'] as const).map(side =>
    down(
      lists
        .filter(list => list.group.side === side)
        .map(list => ({ lists: [list], x: list.group.x ?? Number.POSITIVE_INFINITY })),
      frame,
      to,
    ),
  )
  return apart.some(side => side === undefined) ? undefined : apart.flatMap(side => side ?? [])
}

/** Lists of one mark on both sides share a slot. */
function slotsOf(lists: readonly SetList[]): readonly Slot[] {
  const slots: { lists: SetList[]; x: number }[] = []
  for (const list of lists) {
    const x = list.group.x ?? Number.POSITIVE_INFINITY
    const other = slots.find(
      slot => list.group.mark !== '' && slot.lists.length === 1 && isAcross(slot.lists[0], list.group),
    )
    if (other) {
      other.lists.push(list)
      other.x = (other.x + x) / 2
    } else slots.push({ lists: [list], x })
  }
  return slots
}

const isAcross = (list: SetList | undefined, { mark, side }: ListGroup): boolean =>
  list !== undefined && list.group.mark === mark && list.group.side !== side

function down(
  slots: readonly Slot[],
  frame: Frame,
  to: number,
): readonly { list: SetList; top: number }[] | undefined {
  const ordered = [...slots].sort((a, b) => (a.x === b.x ? 0 : a.x - b.x))
  const wanting = ordered.map(({ lists, x }) => {
    const height = lists.reduce((most, list) => Math.max(most, list.height), 0)
    return { height, wants: Number.isFinite(x) ? frame.wants(x) : frame.paper.height }
  })
  const bounds = { from: topOfLists, to }
  const tops = spaced(wanting, listGaps[0], bounds) ?? spaced(wanting, listGaps[1], bounds)
  return tops && ordered.flatMap(({ lists }, index) => lists.map(list => ({ list, top: tops[index] ?? 0 })))
}

/** Whether on each side the lists follow one another as the rails do, so that no leader crosses. */
function keepsOrder(lists: readonly { list: SetList; top: number }[]): boolean {
  return (['port', 'starboard'] as readonly Side[]).every(side => {
    const own = lists.filter(({ list }) => list.group.side === side).sort((a, b) => a.top - b.top)
    return own.every(
      ({ list }, index) =>
        index === 0 || (own[index - 1]?.list.group.x ?? 0) <= (list.group.x ?? Number.POSITIVE_INFINITY),
    )
  })
}

const emptyLayout = (paper: ChartPaper, hull: HullPlan | undefined): ChartLayout => ({
  paper,
  scale: undefined,
  hull: undefined,
  onSheet: () => ({ x: paper.width / 2, y: topOfPlan }),
  leaderTurn: 0,
  left: paper.margin + 5,
  footTop: paper.height - paper.margin - 6 - footHeight,
  lists: [],
  sideWords: hull ? 20 : 20,
})
