import { afterAll, describe, expect, it } from 'vitest'
import { rules } from '../../src/rules/index.ts'
import { lineColumn, lineStarts } from '../../src/text/index.ts'
import { compiledText } from '../support/compiled.ts'
import { type Notebook, notebooks, type Planted } from './notebook.ts'
import { plants } from './plants/index.ts'
import { seeded, someOf } from './seeded.ts'

const seed = 1847
// So many places for a kind of fault, shared out among the rigs that can have it, two in each at the least; PLANTS=40 looks longer.
const wanted = Number(process.env['PLANTS'] ?? 16)
// Each planted text is compiled whole, on a machine that may be busy.
const timeout = 120_000
const books = notebooks()

interface Outcome {
  readonly kind: string
  readonly rigs: number
  readonly places: number
  readonly planted: number
  readonly caught: number
}

const outcomes: Outcome[] = []

/** Whether what was planted is among what is found in a text of the notebook's name. */
function isCaught(book: Notebook, { text, rules: any, lines }: Planted): boolean {
  const starts = lineStarts(text)
  return compiledText(text, book.name).findings.some(
    ({ rule, at }) =>
      any.includes(rule) &&
      at.source === book.name &&
      (lines.length === 0 || lines.includes(lineColumn(starts, at.start).line)),
  )
}

const cases = Object.entries(plants).map(([kind, plant], index) => {
  const random = seeded(seed + index)
  const able = books.flatMap(book => {
    const all = plant(book)
    return all.length > 0 ? [{ book, all }] : []
  })
  const most = Math.max(2, Math.floor(wanted / able.length))
  const fields = able.map(({ book, all }) => ({
    book,
    places: all.length,
    chosen: someOf(all, most, random),
  }))
  return { kind, fields }
})

describe.each(cases)('$kind', ({ kind, fields }) => {
  it('is caught wherever it is planted', { timeout }, () => {
    const sown = fields.flatMap(({ book, chosen }) => chosen.map(one => ({ book, one })))
    const missed = sown.filter(({ book, one }) => !isCaught(book, one))
    outcomes.push({
      kind,
      rigs: fields.length,
      places: fields.reduce((sum, field) => sum + field.places, 0),
      planted: sown.length,
      caught: sown.length - missed.length,
    })
    expect(sown).not.toEqual([])
    expect(missed.map(({ book, one }) => `${book.name}: ${one.rules}, line ${one.lines}`)).toEqual([])
  })
})

it('every rule is planted', () => {
  const sown = new Set(
    cases.flatMap(({ fields }) => fields.flatMap(({ chosen }) => chosen.flatMap(one => one.rules))),
  )
  expect(rules.length).toBeGreaterThan(50)
  expect(rules.map(({ slug }) => slug).filter(slug => !sown.has(slug))).toEqual([])
})

afterAll(() => {
  const widest = Math.max(...outcomes.map(({ kind }) => kind.length))
  const row = (kind: string, ...cells: readonly (string | number)[]) =>
    [kind.padEnd(widest), ...cells.map(cell => String(cell).padStart(8))].join(' ')
  const sum = (of: (outcome: Outcome) => number) => outcomes.reduce((total, one) => total + of(one), 0)
  console.log(
    [
      row('fault', 'rigs', 'places', 'planted', 'caught'),
      ...outcomes.map(({ kind, rigs, places, planted, caught }) => row(kind, rigs, places, planted, caught)),
      row(
        'all',
        books.length,
        sum(one => one.places),
        sum(one => one.planted),
        sum(one => one.caught),
      ),
    ].join('\n'),
  )
})
