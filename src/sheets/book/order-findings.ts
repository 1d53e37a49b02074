import type { Order } from '../../evolve/index.ts'
import type { Finding } from '../../findings/index.ts'
import type { Evolution, Sail } from '../../rig/index.ts'
import type { Span } from '../../text/index.ts'
import type { Block } from '../flow.ts'
import { type Fitting, jamsUnder } from './order-fitting.ts'
import { orderHead } from './order-head.ts'
import type { OrderSetting } from './order-layout.ts'
import { lowered } from './order-names.ts'
import type { PhasePart } from './order-parts.ts'
import { orderPhase } from './order-phase.ts'

/**
 * What is to be said of how an order stands on its pages. That it takes several is said only of orders in the
 * vessel's own text: nobody aboard can shorten the standard gear.
 */
export function orderFindings(
  order: Order,
  fitting: Fitting,
  evolution: Evolution,
  sail: Sail,
): readonly Finding[] {
  const shortened = shortenedFindings(order, fitting, evolution, sail)
  const isOwn = evolution.span.source === sail.span.source
  if (shortened.length > 0 || fitting.pages.length === 1 || !isOwn) return shortened
  return [
    {
      rule: 'sheet/order-too-long',
      severity: 'note',
      at: evolution.span,
      message: `The order to ${named(order, sail)} is too long for one page of the handbook: it takes ${fitting.pages.length}.`,
      aboard: 'One evolution on one page is read at a glance; two pages must be turned with a line in hand.',
      remedy: 'Shorten what is to be minded, or let two phases be one where the same hands work both.',
      related: [],
    },
  ]
}

const named = ({ kind }: Order, sail: Sail): string => `${kind} the ${lowered(sail.label, sail)}`

/** Words that are left out, or a phase that goes on overleaf: worse than a second page, and told wherever it stands. */
function shortenedFindings(
  order: Order,
  { set, pages }: Fitting,
  evolution: Evolution,
  sail: Sail,
): readonly Finding[] {
  const parts = pages.flat()
  const phase = (number: number): Place => ({
    name: `Phase ${number}`,
    at: evolution.phases[number - 1]?.span ?? evolution.span,
  })
  const cutPhases = parts.filter(part => isCut(one => orderPhase(part, 0, one), set))
  const cut: readonly Place[] = [
    ...(isCut(one => orderHead(order, '', one), set)
      ? [{ name: 'The state before', at: evolution.span }]
      : []),
    ...numbersOf(cutPhases).map(phase),
    ...(isCut(one => jamsUnder(order, 0, one), set)
      ? [{ name: 'What to do if it jams', at: evolution.span }]
      : []),
  ]
  const overleaf = numbersOf(parts.filter(part => part.isContinued)).map(phase)
  const inOrder = `in the order to ${named(order, sail)}`
  const lines = `${set.mostLines} ${set.mostLines === 1 ? 'line' : 'lines'}`
  return [
    ...cut.map(({ name, at }) =>
      tooLong(
        `${name} ${inOrder} is too long for a page of the handbook: its sentences are cut after ${lines}.`,
        at,
      ),
    ),
    ...overleaf.map(({ name, at }) =>
      tooLong(
        `${name} ${inOrder} works more lines than a page of the handbook holds: it goes on overleaf.`,
        at,
      ),
    ),
  ]
}

interface Place {
  readonly name: string
  readonly at: Span
}

const numbersOf = (parts: readonly PhasePart[]): readonly number[] => [
  ...new Set(parts.map(({ phase }) => phase.number)),
]

function isCut(drawn: (set: OrderSetting) => Block, set: OrderSetting): boolean {
  const whole = { ...set, mostLines: Number.POSITIVE_INFINITY }
  return set.mostLines < whole.mostLines && drawn(whole).bottom > drawn(set).bottom
}

const tooLong = (message: string, at: Span): Finding => ({
  rule: 'sheet/order-too-long',
  severity: 'warning',
  at,
  message,
  aboard: 'What a page can’t hold, nobody reads with a line in hand.',
  remedy: 'Say it shorter, or make two phases of one.',
  related: [],
})
