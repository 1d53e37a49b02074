import { expect, test } from 'vitest'
import { evolve, type Order, type OrderPhase } from '../../src/evolve/index.ts'
import { reckon } from '../../src/reckon/index.ts'
import type { Book } from '../../src/sheets/book/book.ts'
import { othersOrdersPages } from '../../src/sheets/book/others-orders.ts'
import type { PageBody } from '../../src/sheets/book/page.ts'
import { stationLines } from '../../src/sheets/book/station-lines.ts'
import { helpedSails } from '../../src/sheets/book/station-sails.ts'
import { orderSpread } from '../../src/sheets/book/working-order.ts'
import type { Sheet } from '../../src/sheets/index.ts'
import { compiledRig } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'
import { meetingTexts, placedTexts } from '../support/placed-text.ts'

const { ruler, covers } = await installedFonts()
const { rig } = compiledRig('schooner-pellow-finch').value
const evolutions = evolve(rig)

function bookOf(stationName: string, sailName: string, change: (order: Order) => Order): Book {
  const station = rig.stations.find(({ name }) => name === stationName)
  const orders = evolutions.ordersAt.get(sailName)
  if (!station || !orders?.set) throw new Error(`the schooner has no ${stationName} or no ${sailName}`)
  const ordersAt = new Map(evolutions.ordersAt).set(sailName, { ...orders, set: change(orders.set) })
  const imprint = { digest: '7Q4K-9MTX', from: 'test.rig', errors: 0 }
  return {
    rig,
    figures: reckon(rig),
    evolutions: { ...evolutions, ordersAt },
    station,
    setting: { ruler, covers, paper: 'A4', imprint },
    lines: stationLines(rig, station),
    pageOf: () => undefined,
    pageCount: undefined,
  }
}

const sailOf = (name: string) => {
  const sail = rig.sailAt.get(name)
  if (!sail) throw new Error(`the schooner has no ${name}`)
  return sail
}

const changed = (number: number, change: Partial<OrderPhase>) => (order: Order) => ({
  ...order,
  phases: order.phases.map(phase => (phase.number === number ? { ...phase, ...change } : phase)),
})

const paragraph =
  'The mate looks aloft, looks forward and looks aft again, and says nothing until all is well. '.repeat(40)

/** Words on the page outside its live area, or over one another. */
const faultsOf = (pages: readonly PageBody[]) =>
  pages.flatMap(page => {
    const texts = placedTexts({ marks: page.marks } as unknown as Sheet)
    const outside = texts.filter(({ box }) => box.bottom > 195.05 || box.right > 118.1)
    return [...outside.map(({ words }) => `outside: ${words}`), ...meetingTexts(texts)]
  })

const wordsOf = (pages: readonly PageBody[]) =>
  pages
    .flatMap(page => placedTexts({ marks: page.marks } as unknown as Sheet).map(({ words }) => words))
    .join('')

const long: readonly (readonly [string, (order: Order) => Order, RegExp])[] = [
  ['what ends a phase', changed(2, { until: paragraph }), /^Phase 2 .* sentences are cut after/],
  ['what is to be minded', changed(1, { minds: [paragraph] }), /^Phase 1 .* sentences are cut after/],
  ['work aloft', changed(2, { aloft: { hands: 2, work: paragraph } }), /^Phase 2 .* sentences are cut after/],
  ['an order', changed(1, { order: paragraph }), /^Phase 1 .* sentences are cut after/],
  ['an answer', changed(1, { answer: paragraph }), /^Phase 1 .* sentences are cut after/],
  ['a report', changed(1, { report: paragraph }), /^Phase 1 .* sentences are cut after/],
  [
    'the state before',
    order => ({ ...order, before: paragraph }),
    /^The state before .* sentences are cut after/,
  ],
  ['what to do if it jams', order => ({ ...order, jams: paragraph }), /^What to do if it jams .* cut after/],
]

test.each(long)('%s as long as a page is cut, with a finding', (_, change, message) => {
  const { value, findings } = orderSpread(sailOf('jib'), bookOf('forecastle', 'jib', change))
  expect(faultsOf(value)).toEqual([])
  expect(wordsOf(value)).toContain('…')
  expect(findings.map(({ rule, severity }) => `${severity} ${rule}`)).toEqual([
    'warning sheet/order-too-long',
  ])
  expect(findings[0]?.message).toMatch(message)
})

test('a phase that works more lines than a page holds goes on overleaf, every line once, with a finding', () => {
  const jib = evolutions.ordersAt.get('jib')?.set
  const rows = jib?.phases.flatMap(({ haul }) => haul) ?? []
  const haul = Array.from({ length: 90 }, (_, at) => rows[at % rows.length]).flatMap(row => row ?? [])
  const { value, findings } = orderSpread(sailOf('jib'), bookOf('forecastle', 'jib', changed(3, { haul })))
  expect(faultsOf(value)).toEqual([])
  expect(findings.map(({ severity }) => severity)).toEqual(['warning'])
  expect(findings[0]?.message).toMatch(/^Phase 3 .* works more lines than a page .* goes on overleaf\.$/)
  expect(wordsOf(value)).toContain('continued')
  expect(wordsOf(value.slice(2, 4))).not.toMatch(/nothing to ease|no haul in this phase/)
  const pages = value.filter(({ key }) => key.startsWith('to set'))
  expect(pages.length).toBeGreaterThan(3)
  const headings = pages.flatMap(({ bookmarks }) => bookmarks.filter(({ level }) => level === 3))
  expect(headings.map(({ title }) => title)).toEqual(
    jib?.phases.map(phase => `${phase.number}. ${phase.order}`),
  )
})

test('a sail of others that no page holds is parted, and a longer phase is cut with a finding', () => {
  const [helper] = rig.stations.flatMap(({ name }) => {
    const [sail] = helpedSails(bookOf(name, 'jib', order => order))
    return sail && evolutions.ordersAt.get(sail.name)?.set ? [{ name, sail }] : []
  })
  if (!helper) throw new Error('no station helps with a sail of others')
  const changedBook = bookOf(helper.name, helper.sail.name, order => ({
    ...order,
    phases: order.phases.map(phase => ({ ...phase, order: paragraph })),
  }))
  const { value, findings } = othersOrdersPages(changedBook)
  expect(faultsOf(value)).toEqual([])
  expect(findings.map(({ rule, at }) => [rule, at])).toEqual([['sheet/order-too-long', helper.sail.span]])
})
