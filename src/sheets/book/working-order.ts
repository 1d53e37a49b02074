import type { Order, OrderPhase } from '../../evolve/index.ts'
import type { Finding, Found } from '../../findings/index.ts'
import type { Evolution, Sail } from '../../rig/index.ts'
import type { Mark } from '../sheet.ts'
import type { Book } from './book.ts'
import type { Block } from './flow.ts'
import { words } from './flow.ts'
import { orderHead } from './order-head.ts'
import { across, type OrderSetting, paces } from './order-layout.ts'
import { curled, lowered } from './order-names.ts'
import { orderPhase } from './order-phase.ts'
import { type Bookmark, live, type PageBody } from './page.ts'
import { orderKey } from './page-key.ts'
import { level, paragraph } from './page-parts.ts'
import { rule, type } from './type.ts'

/**
 * The pages on which a sail is set and doused: to set on the left page, to douse on the right, so that a hand
 * sees the reverse of each order across the fold. An order too long for its page is set closer, then its like
 * lines are joined, then it takes two pages; every one of these is a finding.
 */
export function orderSpread(sail: Sail, book: Book): Found<readonly PageBody[]> {
  const { set, douse } = book.evolutions.ordersAt.get(sail.name) ?? {}
  const setting = set && sail.toSet && orderPages(set, sail.toSet, sail, book)
  const dousing = douse && sail.toDouse && orderPages(douse, sail.toDouse, sail, book)
  const facing = setting === undefined || setting.value.length === 1
  const setPages = standing(setting?.value ?? [], 'verso')
  const dousePages = standing(dousing?.value ?? [], facing ? 'recto' : 'verso')
  return {
    value: [...setPages, ...dousePages],
    findings: [...(setting?.findings ?? []), ...(dousing?.findings ?? [])],
  }
}

function standing(pages: readonly PageBody[], leaf: 'verso' | 'recto'): readonly PageBody[] {
  return pages.map((page, index) => (index === 0 ? { ...page, leaf } : page))
}

/** How an order was made to fit. */
interface Fitting {
  readonly set: OrderSetting
  readonly pages: readonly (readonly OrderPhase[])[]
  readonly how: How
}

type How = 'with room' | 'brief' | 'close' | 'joined' | 'split'

function orderPages(order: Order, evolution: Evolution, sail: Sail, book: Book): Found<readonly PageBody[]> {
  const fitting = fitted(order, book)
  const of = fitting.pages.length
  const value = fitting.pages.map((phases, index) => {
    const number = { index, of }
    const layout = orderPage(order, phases, titleOf(order, sail, number), index === of - 1, fitting.set)
    return pageBody(order, phases, sail, number, layout.marks)
  })
  return { value, findings: fittingFindings(fitting, order, evolution, sail) }
}

// The ways to save room, each with all those before it. An order that even the last can't hold takes two pages,
// with room if they have it.
function fitted(order: Order, book: Book): Fitting {
  const ways = waysToSet(order, book)
  const whole = order.phases.map((_, at) => at)
  const holds = ({ set }: Way) => {
    const heights = heightsOf(order, set)
    return held(heights, whole, heights.first)
  }
  const last = ways[ways.length - 1] ?? ways[0]
  const way = holds(last) ? (ways.find(holds) ?? last) : undefined
  if (way) return { ...way, pages: [order.phases] }
  const parted = [ways[0], ways[1], last].map(({ set }) => ({
    set,
    pages: divided(order, heightsOf(order, set)),
    how: 'split' as const,
  }))
  return parted.reduce((fewest, one) => (one.pages.length < fewest.pages.length ? one : fewest))
}

interface Way {
  readonly how: How
  readonly set: OrderSetting
}

function waysToSet(order: Order, book: Book): readonly [Way, Way, ...Way[]] {
  const [pace, ...closer] = paces
  const roomy: OrderSetting = { book, sail: order.sail, pace, cautions: 'short', isJoined: false }
  const brief: OrderSetting = { ...roomy, cautions: 'brief' }
  const closest = closer.at(-1) ?? pace
  return [
    { how: 'with room', set: roomy },
    { how: 'brief', set: brief },
    ...closer.map((one): Way => ({ how: 'close', set: { ...brief, pace: one } })),
    { how: 'joined', set: { ...brief, pace: closest, isJoined: true } },
  ]
}

/** How high each part of an order is as it would be set: a phase is as high wherever it stands. */
interface Heights {
  readonly phases: readonly number[]
  /** Where the first phase of the first page, and of a later one, begins. */
  readonly first: number
  readonly later: number
  /** What to do if it jams, under the last phase. */
  readonly jams: number
}

function heightsOf(order: Order, set: OrderSetting): Heights {
  return {
    phases: order.phases.map(phase => orderPhase(phase, 0, set).bottom),
    first: orderHead(order, titleTried, set).bottom + afterHead,
    later: orderHead(undefined, titleTried, set).bottom + afterHead,
    jams: jamsUnder(order, 0, set).bottom,
  }
}

// A title takes one line whatever its length, so that any will do to try the room.
const titleTried = 'To set the sail'
const afterHead = 0.4

// The last rule stands this much under the last words, and may reach below where words must end.
const rulesClear = 1.35

/** Whether a page holds these phases, from where its first begins. */
function held({ phases, jams }: Heights, some: readonly number[], top: number): boolean {
  const isLast = some.at(-1) === phases.length - 1
  const bottom = some.reduce((y, at) => y + (phases[at] ?? 0), top) + (isLast ? jams : 0)
  return bottom - (isLast && jams > 0 ? 0 : rulesClear) <= live.textBottom
}

/** The phases of an order parted at a phase's border, on as few pages as hold them, and two as evenly as they can be. */
function divided(order: Order, heights: Heights): readonly (readonly OrderPhase[])[] {
  const filled = filledPages(heights)
  const pages = filled.length === 2 ? (evened(heights) ?? filled) : filled
  return pages.map(page => page.flatMap(at => order.phases[at] ?? []))
}

function filledPages(heights: Heights): readonly (readonly number[])[] {
  const pages: number[][] = []
  for (const at of heights.phases.keys()) {
    const page = pages.at(-1)
    const top = pages.length > 1 ? heights.later : heights.first
    if (page && held(heights, [...page, at], top)) page.push(at)
    else pages.push([at])
  }
  return pages
}

function evened(heights: Heights): readonly (readonly number[])[] | undefined {
  const all = [...heights.phases.keys()]
  const height = (some: readonly number[]) => some.reduce((total, at) => total + (heights.phases[at] ?? 0), 0)
  const halves = all
    .slice(1)
    .map(at => [all.slice(0, at), all.slice(at)] as const)
    .filter(([first, second]) => held(heights, first, heights.first) && held(heights, second, heights.later))
  const [even] = halves.toSorted(
    ([a, b], [c, d]) => Math.abs(height(a) - height(b)) - Math.abs(height(c) - height(d)),
  )
  return even
}

function orderPage(
  order: Order,
  phases: readonly OrderPhase[],
  title: string,
  isLast: boolean,
  set: OrderSetting,
): Block {
  const isFirst = phases[0] === order.phases[0]
  const head = orderHead(isFirst ? order : undefined, title, set)
  const marks: Mark[] = [...head.marks]
  let y = head.bottom + afterHead
  for (const [index, phase] of phases.entries()) {
    const block = orderPhase(phase, y, set)
    const isEnd = index === phases.length - 1
    marks.push(...block.marks, level(0, across.right, block.bottom, isEnd ? rule.table : rule.furniture))
    y = block.bottom
  }
  if (!isLast) return { marks, bottom: y, lines: phases.length }
  const jams = jamsUnder(order, y, set)
  return { marks: [...marks, ...jams.marks], bottom: jams.bottom, lines: phases.length }
}

function jamsUnder(order: Order, y: number, set: OrderSetting): Block {
  if (order.jams === undefined) return { marks: [], bottom: y, lines: 0 }
  const pieces = [words('If it jams: ', type.textStrong), words(`${curled(order.jams)} `, type.text)]
  return paragraph(pieces, y + set.pace.order, set.book.setting.ruler)
}

interface PageNumber {
  readonly index: number
  readonly of: number
}

function titleOf({ kind }: Order, sail: Sail, { index, of }: PageNumber): string {
  const title = `To ${kind} the ${lowered(sail.label)}`
  return of === 1 ? title : `${title}, ${index + 1} of ${of}`
}

function pageBody(
  order: Order,
  phases: readonly OrderPhase[],
  sail: Sail,
  number: PageNumber,
  marks: readonly Mark[],
): PageBody {
  const key = orderKey(sail.name, order.kind)
  const title = titleOf(order, sail, number)
  const opening: readonly Bookmark[] = [
    ...(order.kind === 'set' || !sail.toSet ? [{ level: 1 as const, title: sail.label }] : []),
    { level: 2, title: order.kind === 'set' ? 'To set' : 'To douse' },
  ]
  const spoken = phases.map((phase): Bookmark => ({ level: 3, title: `${phase.number}. ${phase.order}` }))
  return {
    key: number.index === 0 ? key : `${key} ${number.index + 1}`,
    title,
    section: sail.label,
    description: `${title}: ${phases.length} ${phases.length === 1 ? 'phase' : 'phases'}, each with its order, cautions, lines to haul and to ease, and what ends it.`,
    marks,
    bookmarks: [...(number.index === 0 ? opening : []), ...spoken],
  }
}

function fittingFindings(
  { how, pages }: Fitting,
  { kind }: Order,
  evolution: Evolution,
  sail: Sail,
): readonly Finding[] {
  if (how === 'with room') return []
  const page = `The page to ${kind} the ${lowered(sail.label)}`
  const said = {
    brief: `${page} is full: its cautions are worded as briefly as they can be.`,
    close: `${page} is full: its phases stand closer together than on other pages.`,
    joined: `${page} is full: like lines of one rail share a row.`,
    split: `The order to ${kind} the ${lowered(sail.label)} is too long for one page of the handbook: it takes ${pages.length}.`,
  }
  return [
    {
      rule: 'sheet/order-too-long',
      severity: 'note',
      at: evolution.span,
      message: said[how],
      aboard: 'One evolution on one page is read at a glance; two pages must be turned with a line in hand.',
      remedy: 'Shorten what is to be minded, or let two phases be one where the same hands work both.',
      related: [],
    },
  ]
}
