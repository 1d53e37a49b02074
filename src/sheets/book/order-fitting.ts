import type { Order } from '../../evolve/index.ts'
import { type Block, words } from '../flow.ts'
import type { Book } from './book.ts'
import { orderHead } from './order-head.ts'
import { condensedPaces, type OrderSetting, paces } from './order-layout.ts'
import { curled } from './order-names.ts'
import { halved, type PhasePart, wholePhases } from './order-parts.ts'
import { orderPhase } from './order-phase.ts'
import { live } from './page.ts'
import { paragraph } from './page-parts.ts'
import { type } from './type.ts'

/** How an order stands on its pages. */
export interface Fitting {
  readonly set: OrderSetting
  readonly pages: readonly (readonly PhasePart[])[]
}

/**
 * An order on one page, if any way of setting it brings it there: with room, its cautions worded briefly, closer
 * together, like lines joined, and at the last with its cautions beside the orders. Else it takes several.
 */
export function fittedOrder(order: Order, book: Book): Fitting {
  const phases = wholePhases(order)
  const { roomy, brief, closer, joined, condensed, condensedJoined } = waysToSet(order, book)
  const onOnePage = (set: OrderSetting) => areOnOnePage(order, phases, set)
  const set =
    [roomy].find(onOnePage) ??
    firstOf([brief, ...closer], onOnePage) ??
    [joined].find(onOnePage) ??
    firstOf(condensed, onOnePage) ??
    firstOf(condensedJoined, onOnePage)
  return set ? { set, pages: [phases] } : partedOrder(order, book)
}

/**
 * An order on as many pages as it needs, with room if they have it. A phase that is longer than a page goes on
 * overleaf, and where not even its halves have room, its sentences lose their ends.
 */
export function partedOrder(order: Order, book: Book): Fitting {
  const phases = wholePhases(order)
  const { roomy, brief, joined } = waysToSet(order, book)
  const parted = [roomy, brief, joined].flatMap(way => divided(order, phases, way))
  const fewest = Math.min(...parted.map(({ pages }) => pages.length))
  return parted.find(({ pages }) => pages.length === fewest) ?? shortened(order, phases, joined)
}

interface Ways {
  readonly roomy: OrderSetting
  readonly brief: OrderSetting
  /** Each closer than the one before. */
  readonly closer: readonly OrderSetting[]
  readonly joined: OrderSetting
  readonly condensed: readonly OrderSetting[]
  readonly condensedJoined: readonly OrderSetting[]
}

function waysToSet(order: Order, book: Book): Ways {
  const [pace, ...closerPaces] = paces
  const roomy: OrderSetting = {
    book,
    sail: order.sail,
    pace,
    cautions: 'short',
    isJoined: false,
    isCondensed: false,
    mostLines: Number.POSITIVE_INFINITY,
  }
  const brief: OrderSetting = { ...roomy, cautions: 'brief' }
  const closer = closerPaces.map(one => ({ ...brief, pace: one }))
  const joined: OrderSetting = { ...brief, pace: closerPaces.at(-1) ?? pace, isJoined: true }
  const condensed = condensedPaces.map(one => ({ ...brief, pace: one, isCondensed: true }))
  const condensedJoined = condensed.map(one => ({ ...one, isJoined: true }))
  return { roomy, brief, closer, joined, condensed, condensedJoined }
}

// Where one of them is close enough, so are all after it.
function firstOf(
  closer: readonly OrderSetting[],
  fits: (set: OrderSetting) => boolean,
): OrderSetting | undefined {
  const last = closer.at(-1)
  if (!last || !fits(last)) return undefined
  let [from, to] = [0, closer.length - 1]
  while (from < to) {
    const middle = (from + to) >> 1
    if (fits(closer[middle] ?? last)) to = middle
    else from = middle + 1
  }
  return closer[to]
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

function heightsOf(order: Order, phases: readonly PhasePart[], set: OrderSetting): Heights {
  return {
    phases: phases.map(part => orderPhase(part, 0, set).bottom),
    first: orderHead(order, titleTried, set).bottom + afterHead,
    later: orderHead(undefined, titleTried, set).bottom + afterHead,
    jams: jamsUnder(order, 0, set).bottom,
  }
}

// The same as that a page holds all of them, but done with at the first phase for which there is no room.
function areOnOnePage(order: Order, phases: readonly PhasePart[], set: OrderSetting): boolean {
  let bottom = orderHead(order, titleTried, set).bottom + afterHead
  for (const part of phases) {
    bottom += orderPhase(part, 0, set).bottom
    if (bottom - rulesClear > live.textBottom) return false
  }
  const jams = jamsUnder(order, 0, set).bottom
  return jams === 0 || bottom + jams <= live.textBottom
}

// A title takes one line whatever its length, so that any will do to try the room.
const titleTried = 'To set the sail'

/** From the head of an order's page to the rule above its first phase. */
export const afterHead = 0.4

// The last rule stands this much under the last words, and may reach below where words must end.
const rulesClear = 1.35

/** Whether a page holds these phases: the first page of the order, or a later one. */
function isHeld({ phases, first, later, jams }: Heights, some: readonly number[], isFirst = true): boolean {
  const isLast = some.at(-1) === phases.length - 1
  const top = isFirst ? first : later
  const bottom = some.reduce((y, at) => y + (phases[at] ?? 0), top) + (isLast ? jams : 0)
  return bottom - (isLast && jams > 0 ? 0 : rulesClear) <= live.textBottom
}

/** What to do if it jams, under the last phase. */
export function jamsUnder(order: Order, y: number, set: OrderSetting): Block {
  if (order.jams === undefined) return { marks: [], bottom: y, lines: 0 }
  const pieces = [words('If it jams: ', type.textStrong), words(`${curled(order.jams)} `, type.text)]
  return paragraph(pieces, y + set.pace.order, set.book.setting.ruler, { most: set.mostLines })
}

/** The phases parted at their borders, two pages as evenly as they can be; nothing where a phase is longer than a page. */
function divided(order: Order, phases: readonly PhasePart[], set: OrderSetting): readonly Fitting[] {
  const heights = heightsOf(order, phases, set)
  const filled = filledPages(heights)
  if (!filled.every((page, index) => isHeld(heights, page, index === 0))) return []
  const pages = filled.length === 2 ? evened(heights, filled) : filled
  return [{ set, pages: pages.map(page => page.flatMap(at => phases[at] ?? [])) }]
}

type Pages = readonly (readonly number[])[]

function filledPages(heights: Heights): Pages {
  const pages: number[][] = []
  for (const at of heights.phases.keys()) {
    const page = pages.at(-1)
    if (page && isHeld(heights, [...page, at], pages.length === 1)) page.push(at)
    else pages.push([at])
  }
  return pages
}

function evened(heights: Heights, filled: Pages): Pages {
  const all = [...heights.phases.keys()]
  const height = (some: readonly number[]) => some.reduce((total, at) => total + (heights.phases[at] ?? 0), 0)
  const halves = all
    .slice(1)
    .map(at => [all.slice(0, at), all.slice(at)] as const)
    .filter(([first, second]) => isHeld(heights, first) && isHeld(heights, second, false))
  const uneven = ([first, second]: (typeof halves)[number]) => Math.abs(height(first) - height(second))
  return halves.toSorted((one, other) => uneven(one) - uneven(other))[0] ?? filled
}

// Nothing is left out if parts of phases find room; else the ends of sentences, the fewer lines to each the longer
// they are.
function shortened(order: Order, phases: readonly PhasePart[], joined: OrderSetting): Fitting {
  const shortest = { ...joined, mostLines: 1 }
  const sets = [joined, { ...joined, mostLines: 6 }, { ...joined, mostLines: 3 }, shortest]
  const parts = (set: OrderSetting) => phases.flatMap(part => shortParts(order, part, set))
  const [fitting] = sets.flatMap(set => divided(order, parts(set), set))
  return fitting ?? { set: shortest, pages: parts(shortest).map(part => [part]) }
}

function shortParts(order: Order, part: PhasePart, set: OrderSetting): readonly PhasePart[] {
  const isShort = isHeld(heightsOf(order, [part], set), [0])
  const halves = isShort ? undefined : halved(part)
  return halves ? halves.flatMap(half => shortParts(order, half, set)) : [part]
}
