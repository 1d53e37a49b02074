import type { Order } from '../../evolve/index.ts'
import type { Found } from '../../findings/index.ts'
import type { Evolution, Sail } from '../../rig/index.ts'
import type { Mark } from '../sheet.ts'
import type { Book } from './book.ts'
import { orderFindings } from './order-findings.ts'
import { afterHead, type Fitting, fittedOrder, jamsUnder, partedOrder } from './order-fitting.ts'
import { orderHead } from './order-head.ts'
import { across } from './order-layout.ts'
import { lowered } from './order-names.ts'
import type { PhasePart } from './order-parts.ts'
import { orderPhase } from './order-phase.ts'
import type { Bookmark, Leaf, PageBody } from './page.ts'
import { orderKey } from './page-key.ts'
import { level } from './page-parts.ts'
import { rule } from './type.ts'

/**
 * The pages on which a sail is set and doused: to set on the left page, to douse on the right, so that a hand
 * sees the reverse of each order across the fold. One that takes two pages has a left and a right page for itself.
 */
export function orderSpread(sail: Sail, book: Book): Found<readonly PageBody[]> {
  const fitted = fittedOrders(sail, book)
  const areFacing = fitted.length === 2 && fitted.every(({ fitting }) => fitting.pages.length === 1)
  return {
    value: fitted.flatMap(({ order, fitting }) => {
      const leaf: Leaf = order.kind === 'douse' && areFacing ? 'recto' : 'verso'
      return fitting.pages.map((_, index) => ({
        ...orderPage(order, sail, fitting, index),
        ...(index === 0 ? { leaf } : {}),
      }))
    }),
    findings: fitted.flatMap(({ order, fitting, evolution }) =>
      orderFindings(order, fitting, evolution, sail),
    ),
  }
}

interface Fitted {
  readonly order: Order
  readonly evolution: Evolution
  readonly fitting: Fitting
}

// Where one of the two takes more than a page, they don't face each other, and the other need not be crammed.
function fittedOrders(sail: Sail, book: Book): readonly Fitted[] {
  const { set, douse } = book.evolutions.ordersAt.get(sail.name) ?? {}
  const fitted = [fittedOf(set, sail.toSet, book), fittedOf(douse, sail.toDouse, book)].flat()
  const arePaged = fitted.some(({ fitting }) => fitting.pages.length > 1)
  return fitted.map(one =>
    arePaged && one.fitting.set.isCondensed ? { ...one, fitting: partedOrder(one.order, book) } : one,
  )
}

const fittedOf = (
  order: Order | undefined,
  evolution: Evolution | undefined,
  book: Book,
): readonly Fitted[] => (order && evolution ? [{ order, evolution, fitting: fittedOrder(order, book) }] : [])

function orderPage(order: Order, sail: Sail, fitting: Fitting, index: number): PageBody {
  const parts = fitting.pages[index] ?? []
  const title = titleOf(order, sail, index, fitting.pages.length)
  return {
    ...pageOf(order, sail, parts, index),
    title,
    description: `${title}: ${parts.length} ${parts.length === 1 ? 'phase' : 'phases'}, each with its order, cautions, lines to haul and to ease, and what ends it.`,
    marks: marksOf(order, title, fitting, index),
  }
}

function marksOf(order: Order, title: string, { set, pages }: Fitting, index: number): readonly Mark[] {
  const head = orderHead(index === 0 ? order : undefined, title, set)
  const marks: Mark[] = [...head.marks]
  let y = head.bottom + afterHead
  const parts = pages[index] ?? []
  for (const part of parts) {
    const block = orderPhase(part, y, set)
    const isEnd = part === parts.at(-1)
    marks.push(...block.marks, level(0, across.right, block.bottom, isEnd ? rule.table : rule.furniture))
    y = block.bottom
  }
  return index === pages.length - 1 ? [...marks, ...jamsUnder(order, y, set).marks] : marks
}

function titleOf({ kind }: Order, sail: Sail, index: number, of: number): string {
  const title = `To ${kind} the ${lowered(sail.label, sail)}`
  return of === 1 ? title : `${title}, ${index + 1} of ${of}`
}

function pageOf(
  order: Order,
  sail: Sail,
  parts: readonly PhasePart[],
  index: number,
): Pick<PageBody, 'key' | 'section' | 'bookmarks'> {
  const key = orderKey(sail.name, order.kind)
  const opening: readonly Bookmark[] = [
    ...(order.kind === 'set' || !sail.toSet ? [{ level: 1 as const, title: sail.label }] : []),
    { level: 2, title: order.kind === 'set' ? 'To set' : 'To douse' },
  ]
  const spoken = parts
    .filter(({ isContinued }) => !isContinued)
    .map(({ phase }): Bookmark => ({ level: 3, title: `${phase.number}. ${phase.order}` }))
  return {
    key: index === 0 ? key : `${key} ${index + 1}`,
    section: sail.label,
    bookmarks: [...(index === 0 ? opening : []), ...spoken],
  }
}
