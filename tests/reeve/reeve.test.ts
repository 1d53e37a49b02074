import { describe, expect, it } from 'vitest'
import { reeve } from '../../src/reeve/index.ts'
import type { Line, Rig } from '../../src/rig/index.ts'
import { vessels } from '../rigs/tables.ts'
import { compiledRig, compiledText, exampleFiles } from '../support/compiled.ts'
import { spoiledTables, tablesOf } from './tables.ts'

describe.each(vessels)('%s, reeved from her tables', vessel => {
  const reeved = reeve(tablesOf(vessel), exampleFiles)
  const { value, findings } = compiledText(reeved.value)
  const byHand = compiledRig(vessel).value

  it('is a sound rig', () => {
    expect(reeved.findings).toEqual([])
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([])
  })

  it('has the same sails and gear as the rig written by hand', () => {
    const shape = ({ sails }: Rig) =>
      Object.fromEntries(
        sails.map(sail => [
          sail.name,
          { ...sail, span: 0, gear: 0, toSet: 0, toDouse: 0, reefs: sail.reefs.length },
        ]),
      )
    expect(shape(value.rig)).toEqual(shape(byHand.rig))
    expect(value.rig.order).toEqual(byHand.rig.order)
  })

  it('gives every line the same rope, purchase, hands, work, counterparts and pin', () => {
    expect(told(value.rig)).toEqual(told(byHand.rig))
  })

  it('leads every line through the same points, to two centimetres', () => {
    for (const line of byHand.rig.lines) {
      const lead = value.rig.lineAt.get(line.address)?.lead ?? []
      expect(
        lead.map(({ parts }) => parts),
        line.address,
      ).toEqual(line.lead.map(({ parts }) => parts))
      for (const [i, { at, what }] of line.lead.entries()) {
        const other = lead[i]?.at
        const off = other
          ? Math.hypot(at.x - other.x, at.y - other.y, at.z - other.z)
          : Number.POSITIVE_INFINITY
        expect(off, `${line.address}, ${what}`).toBeLessThanOrEqual(0.02)
      }
    }
  })

  it('reckons the same areas, and the same centre of effort to a centimetre', () => {
    for (const [name, { area }] of byHand.figures.sails) {
      const other = value.figures.sails.get(name)?.area
      expect(other?.known && area.known ? Math.abs(other.value - area.value) : other, name).toBeLessThan(0.05)
    }
  })

  it('is rove with as much rope, line by line, within 0.1 m', () => {
    const rope = ({ figures }: typeof value) =>
      new Map(
        [...figures.leads()].map(([address, { length }]) => [address, length.known ? length.value : NaN]),
      )
    const reeved = rope(value)
    const apart = [...rope(byHand)].filter(
      ([address, length]) => !(Math.abs((reeved.get(address) ?? NaN) - length) < 0.1),
    )
    expect(apart).toEqual([])
  })

  it('works every sail by the same orders', () => {
    const orders = ({ sails }: Rig) =>
      Object.fromEntries(
        sails.map(({ name, toSet, toDouse }) => [name, [toSet?.phases, toDouse?.phases].map(withoutSpans)]),
      )
    expect(orders(value.rig)).toEqual(orders(byHand.rig))
  })

  it('says her gear in fewer lines than she has', () => {
    const gear = reeved.value.split('\n').filter(line => /^ {6}/.test(line)).length
    expect(gear).toBeLessThan(value.rig.lines.length)
  })
})

const told = (rig: Rig) =>
  Object.fromEntries(
    rig.lines.map((line: Line) => [
      line.address,
      {
        rope: line.rope && { ...line.rope, diameter: Math.round(line.rope.diameter * 1e4) },
        purchase: line.purchase,
        hands: line.hands,
        deed: line.deed && [line.deed.verb, line.deed.object, line.deed.direction],
        counterparts: [...line.counterparts].sort(),
        belay: [line.belay?.rail, line.belay?.number, line.belay?.side],
      },
    ]),
  )

const withoutSpans = (value: unknown) =>
  JSON.parse(JSON.stringify(value ?? null, (key, inner) => (/span|Span|^at$/.test(key) ? undefined : inner)))

it('takes two rows of one name for a pair, where their sides are told', () => {
  const vessel = 'schooner-pellow-finch'
  const tables = tablesOf(vessel)
  const { name, text } = tables.get('lines') ?? { name: '', text: '' }
  tables.set('lines', { name, text: text.replace(/ (port|starboard),/g, ',') })
  expect(reeve(tables, exampleFiles)).toEqual(reeve(tablesOf(vessel), exampleFiles))
})

describe('tables that are amiss', () => {
  it('are told with file, row and column, and there is no text', () => {
    const tables = spoiledTables('schooner-pellow-finch', 'lines', 'FR-P,11', 'FR-P,12')
    const { value, findings } = reeve(tables, exampleFiles)
    expect(value).toBe('')
    expect(findings.map(({ rule, message }) => [rule, message])).toEqual([
      ['table/no-pin', 'lines.csv, row 18, pin: rail FR-P has 11 pins, and no pin 12.'],
    ])
    const [{ at } = { at: { start: 0, end: 0 } }] = findings
    expect(tables.get('lines')?.text.slice(at.start, at.end)).toBe('12')
  })

  it('keep names that hold small words, quotes and odd marks as they are', () => {
    const tables = spoiledTables('schooner-pellow-finch', 'deck', 'galley house', '"stove, ""to port"" <b>"')
    const { value } = reeve(tables, exampleFiles)
    expect(compiledText(value).value.rig.deck.map(({ name }) => name)).toContain('stove, to port <b>')
  })
})
