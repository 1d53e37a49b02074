import { describe, expect, test } from 'vitest'
import { evolve, type Order, workingOrders } from '../../src/evolve/index.ts'
import { reckon } from '../../src/reckon/index.ts'
import type { Rig } from '../../src/rig/index.ts'
import { answerGraph } from '../../src/sheets/book/answer-graph.ts'
import { answerLayout, stretchesOf } from '../../src/sheets/book/answer-layout.ts'
import { answersPages } from '../../src/sheets/book/answers.ts'
import type { Book } from '../../src/sheets/book/book.ts'
import { countCrossings } from '../../src/sheets/book/crossings.ts'
import { othersOrdersPages } from '../../src/sheets/book/others-orders.ts'
import type { PageBody } from '../../src/sheets/book/page.ts'
import { registerPages } from '../../src/sheets/book/register.ts'
import { stationLines } from '../../src/sheets/book/station-lines.ts'
import { helpedSails, isOwn, rowsOf, spreadSails } from '../../src/sheets/book/station-sails.ts'
import { orderSpread } from '../../src/sheets/book/working-order.ts'
import type { Sheet } from '../../src/sheets/index.ts'
import { compiledRig } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'
import { meetingTexts, type PlacedText, placedTexts } from '../support/placed-text.ts'

const { ruler, covers } = await installedFonts()
const imprint = { digest: '7Q4K-9MTX', from: 'test.rig', errors: 0 }

const booksOf = (rig: Rig): readonly Book[] =>
  rig.stations.map(station => ({
    rig,
    figures: reckon(rig),
    evolutions: evolve(rig),
    station,
    setting: { ruler, covers, paper: 'A4', imprint },
    lines: stationLines(rig, station),
    pageOf: () => undefined,
    pageCount: undefined,
  }))

const books = ['barque-harrow-tansy', 'schooner-pellow-finch']
  .flatMap(name => booksOf(compiledRig(name).value.rig))
  .map(book => ({ name: `${book.rig.vessel.name}, ${book.station.name}`, book }))

const textsOf = (page: PageBody): readonly PlacedText[] =>
  placedTexts({ marks: page.marks } as unknown as Sheet)
const wordsOf = (page: PageBody): string =>
  textsOf(page)
    .map(({ words }) => words)
    .join('')

/** What stands outside the live area, under 8 pt, or on other words. */
const faultsOf = (page: PageBody): readonly string[] => {
  const texts = textsOf(page)
  return [
    ...texts.filter(({ size }) => size < 8).map(({ words }) => `${page.title}: "${words}" is too small`),
    ...texts
      .filter(({ box }) => box.left < -0.1 || box.right > 118.1 || box.top < 10 || box.bottom > 195.05)
      .map(({ words }) => `${page.title}: "${words}" is outside`),
    ...meetingTexts(texts).map(pair => `${page.title}: ${pair}`),
  ]
}

/** Orders of six phases with much to hold and to tend, which no page holds: they have two that face each other. */
const pagedOrders = ['set spanker', 'set fore topsail']

describe.each(books)('the orders in the book of $name', ({ book }) => {
  const { rig } = book
  const spreads = spreadSails(book).map(sail => ({ sail, ...orderSpread(sail, book) }))
  const pages = [
    ...answersPages(book).value,
    ...registerPages(book).value,
    ...spreads.flatMap(({ value }) => value),
    ...othersOrdersPages(book).value,
  ]
  const ordersOf = (name: string): readonly Order[] => {
    const sail = rig.sailAt.get(name)
    if (!sail) return []
    const { set, douse } = workingOrders(rig, sail)
    return [set, douse].filter(order => order !== undefined)
  }

  test('stand in the live area in 8 pt or more, and nothing on anything else', () => {
    expect(pages.flatMap(faultsOf)).toEqual([])
  })

  test('set lines that are worked in 10 pt or more', () => {
    const small = spreads
      .flatMap(({ value }) => value)
      .flatMap(textsOf)
      .filter(
        ({ tags }) => tags.some(({ role }) => role === 'LI') && !tags.some(({ role }) => role === 'Lbl'),
      )
      .filter(({ words, size }) => size < 10 && !/^[PSWL]$/.test(words))
    expect(small.map(({ words }) => words)).toEqual([])
  })

  test('have every phase whole, once and in order', () => {
    for (const { sail, value } of spreads)
      for (const order of ordersOf(sail.name)) {
        const headings = value
          .filter(({ key }) => key.startsWith(`to ${order.kind} `))
          .flatMap(({ bookmarks }) => bookmarks.filter(({ level }) => level === 3).map(({ title }) => title))
        expect(headings).toEqual(order.phases.map(phase => `${phase.number}. ${phase.order}`))
      }
  })

  test('set on the left and douse across from it, or have a spread each; and nobody is told of gear not theirs', () => {
    for (const { sail, value, findings } of spreads) {
      const leaves = value.map(({ leaf }) => leaf)
      const paged = pagedOrders.some(name => name.endsWith(` ${sail.name}`))
      expect(leaves, sail.name).toEqual(paged ? expect.arrayContaining(['verso']) : ['verso', 'recto'])
      const ofTwo = value.filter(({ title }) => / of 2$/.test(title))
      for (const page of ofTwo) expect(page.leaf).toBe(page.title.endsWith('1 of 2') ? 'verso' : undefined)
      expect(findings).toEqual([])
    }
  })

  test('never give one line its fixed sides and its changing ones', () => {
    for (const { value } of spreads)
      for (const page of value)
        for (const item of itemsOf(page)) {
          const sides = item.filter(words => /^[PSWL]$/.test(words))
          const isFixed = sides.some(side => 'PS'.includes(side))
          const changes = sides.some(side => 'WL'.includes(side))
          expect(isFixed && changes, `${page.title}: ${item.join(' ')}`).toBe(false)
        }
  })

  test('name every line that is freed or followed for a haul', () => {
    for (const { sail, value } of spreads)
      for (const order of ordersOf(sail.name)) {
        const text = value
          .filter(({ key }) => key.startsWith(`to ${order.kind} `))
          .map(wordsOf)
          .join(' ')
        for (const { freed } of order.phases)
          for (const { pairKey, phase } of freed) {
            const kind = rig.pairAt.get(pairKey)?.[0]?.kind ?? ''
            const told = new RegExp(`${kind}[^:]*: (off|eased) in [^"]*${phase}`)
            expect(text, `${order.kind} ${sail.name}: ${pairKey}`).toMatch(told)
          }
      }
  })

  test('have the cautions of each phase under their numbers', () => {
    for (const { sail, value } of spreads)
      for (const order of ordersOf(sail.name)) {
        const told = value
          .filter(({ key }) => key.startsWith(`to ${order.kind} `))
          .flatMap(textsOf)
          .flatMap(({ tags }) =>
            tags.flatMap(({ actual }) => /^Caution (\d+)\. $/.exec(actual ?? '')?.[1] ?? []),
          )
        expect(told.map(Number)).toEqual(order.phases.flatMap(({ cautions }) => cautions))
      }
  })

  test('leave no line of the station untold: each order has a spread, or its part in the orders of others', () => {
    const helped = helpedSails(book)
    for (const sail of rig.sails) {
      const isOurs = ordersOf(sail.name).some(({ phases }) =>
        phases.some(phase => rowsOf(phase).some(row => isOwn(row, book))),
      )
      const isTold = spreads.some(spread => spread.sail === sail) || helped.includes(sail)
      expect(isTold || !isOurs, sail.name).toBe(true)
    }
    const others = othersOrdersPages(book).value.map(wordsOf).join(' ')
    for (const sail of helped) expect(others).toContain(sail.label)
  })

  test('register every line of the station and of its sails', () => {
    const told = new Set(registerPages(book).value.flatMap(({ alsoHolds }) => alsoHolds ?? []))
    const { own, othersHere, lent } = book.lines
    for (const line of [...own, ...othersHere, ...lent])
      expect(told, line.address).toContain(`line ${line.pairKey}`)
  })

  test('join counterparts without a crossing, and draw or tell every one', () => {
    for (const sail of spreadSails(book)) {
      const graph = answerGraph(sail, rig)
      const layout = answerLayout(graph)
      expect(countCrossings(stretchesOf(layout, layout.bus, layout.fans)), sail.name).toBe(0)
      const inBus = (layout.bus?.setting.length ?? 0) * (layout.bus?.taking.length ?? 0)
      expect(inBus + layout.fans.length + layout.told.length).toBe(graph.across.length)
    }
  })
})

/** The words of each line of the lists, as they are grouped for a reader of tags. */
function itemsOf(page: PageBody): readonly (readonly string[])[] {
  const items: string[][] = []
  const walk = (marks: PageBody['marks'], inItem: boolean): void => {
    for (const mark of marks) {
      if (mark.kind === 'text' && inItem) items.at(-1)?.push(mark.words)
      if (mark.kind !== 'group') continue
      const begins = mark.tag?.role === 'LI'
      if (begins) items.push([])
      walk(mark.marks, inItem || begins)
    }
  }
  walk(page.marks, false)
  return items
}
