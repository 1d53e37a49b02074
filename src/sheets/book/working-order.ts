import { type Order, type OrderPhase, workingOrders } from '../../evolve/index.ts'
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
  const { set, douse } = workingOrders(book.rig, sail)
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

// The ways to save room, each with all those before it.
function fitted(order: Order, book: Book): Fitting {
  const ways = waysToSet(order, book)
  const way = ways.find(({ set }) => fits(order, order.phases, true, set))
  if (way) return { ...way, pages: [order.phases] }
  const parted = ways.map(({ set }) => ({ set, pages: divided(order, set), how: 'split' as const }))
  const [fewest = { set: ways[0].set, pages: [], how: 'split' }] = parted.toSorted(
    (a, b) => a.pages.length - b.pages.length,
  )
  return fewest
}

interface Way {
  readonly how: How
  readonly set: OrderSetting
}

function waysToSet(order: Order, book: Book): readonly [Way, ...Way[]] {
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

const fits = (order: Order, phases: readonly OrderPhase[], isLast: boolean, set: OrderSetting): boolean =>
  orderPage(order, phases, titleTried, isLast, set).bottom <= live.textBottom + 0.6

// A title takes one line whatever its length, so that any will do to try the room.
const titleTried = 'To set the sail'

/** The phases of an order parted at a phase's border, on as few pages as hold them, and as evenly as they can be. */
function divided(order: Order, set: OrderSetting): readonly (readonly OrderPhase[])[] {
  const heights = order.phases.map(phase => orderPhase(phase, 0, set).bottom)
  const firstFit = filled(order, set)
  const [first, second] = firstFit
  if (firstFit.length !== 2 || !first || !second) return firstFit
  const half = heights.reduce((total, height) => total + height, 0) / 2
  const evenAt = order.phases.findIndex(
    (_, at) => heights.slice(0, at + 1).reduce((total, height) => total + height, 0) >= half,
  )
  const even = [order.phases.slice(0, evenAt + 1), order.phases.slice(evenAt + 1)] as const
  const holds = even[1].length > 0 && fits(order, even[0], false, set) && fits(order, even[1], true, set)
  return holds ? even : firstFit
}

function filled(order: Order, set: OrderSetting): readonly (readonly OrderPhase[])[] {
  const pages: OrderPhase[][] = []
  let page: OrderPhase[] = []
  for (const [index, phase] of order.phases.entries()) {
    const isLast = index === order.phases.length - 1
    if (page.length > 0 && !fits(order, [...page, phase], isLast, set)) {
      pages.push(page)
      page = []
    }
    page.push(phase)
  }
  return page.length > 0 ? [...pages, page] : pages
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
  let y = head.bottom + 0.4
  for (const [index, phase] of phases.entries()) {
    const block = orderPhase(phase, y, set)
    const isEnd = index === phases.length - 1
    marks.push(...block.marks, level(0, across.right, block.bottom, isEnd ? rule.table : rule.furniture))
    y = block.bottom
  }
  if (!isLast || order.jams === undefined) return { marks, bottom: y, lines: phases.length }
  const pieces = [words('If it jams: ', type.textStrong), words(`${curled(order.jams)} `, type.text)]
  const jams = paragraph(pieces, y + set.pace.order, set.book.setting.ruler)
  return { marks: [...marks, ...jams.marks], bottom: jams.bottom, lines: phases.length }
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
