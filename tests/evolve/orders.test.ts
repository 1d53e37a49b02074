import { describe, expect, test } from 'vitest'
import { cautions, governingNote, type OrderRow } from '../../src/evolve/index.ts'
import { compiledRig, compiledText } from '../support/compiled.ts'
import { called } from './order-words.ts'

const vessels = ['barque-harrow-tansy', 'schooner-pellow-finch'].map(name => ({
  name,
  ...compiledRig(name).value,
}))

/** One jib on two rails; the phases are the test's. */
const jib = (phases: string, stations = '') => {
  const text = `edition 1

vessel Wren
  cutter

masts
  mast, stepped 4.00 m aft
    lower mast to 9.00 m up

stays
  forestay from 3.90 m aft 8.60 m up to 0.20 m aft 1.40 m up

sails
  jib, headsail on forestay
    tack 0.50 m aft 1.60 m up, head 3.70 m aft 8.00 m up, clew 3.40 m aft 1.80 m up
    gear test jib

gear test jib
  fits headsail on stay
  halyard single, 12 mm polyester, 3 hands, hoists head against downhaul
  downhaul single, 10 mm polyester, 1 hand, lowers head against halyard
  sheet pair, 12 mm polyester, 2 hands, draws clew aft against other sheet

  to set
${phases}

rails
  fore rail, port and starboard, marked FR
    4 pins from 4.00 m aft 1.20 m out to 4.75 m aft 1.20 m out, 1.80 m up

belay on fore rail
  1  port jib halyard, starboard jib downhaul
  2  jib sheet
${stations}`
  const { rig, evolutions } = compiledText(text).value
  const order = evolutions.ordersAt.get('jib')?.set
  if (!order) throw new Error('the jib has no order to set')
  return { rig, order }
}

describe('what answers a haul', () => {
  test('follows from the counterparts where the text is silent', () => {
    const { rig, order } = jib('    "Hoist away."\n      haul halyard')
    expect(order.phases[0]?.ease.map(row => [called(rig, row), row.act, row.source])).toEqual([
      ['downhaul', 'ease', 'counterpart'],
    ])
  })

  test('is called by the side that answers: the lee sheet by the weather one', () => {
    const { rig, order } = jib('    "Sheet aft."\n      haul lee sheet')
    const [row] = order.phases[0]?.ease ?? []
    expect(row && called(rig, row)).toBe('weather sheet')
    expect(row?.lines).toEqual({ starboard: ['jib.sheet.starboard'], port: ['jib.sheet.port'] })
  })

  test('is left to the brace across where the order names one', () => {
    const { rig, order } = jib('    "Sheet aft."\n      haul named sheet')
    expect(order.phases[0]?.ease.map(row => called(rig, row))).toEqual(['other sheet'])
  })

  test('was freed before: it is named with its phase, and not eased again', () => {
    const { order } = jib('    "Clear."\n      let go downhaul\n    "Hoist away."\n      haul halyard')
    const [, hoist] = order.phases
    expect(hoist?.ease).toEqual([])
    expect(hoist?.freed).toEqual([
      { pairKey: 'jib.downhaul', reach: 'all', act: 'let go', phase: 1, belayed: false },
    ])
  })

  test('was freed before and is held now: now belayed', () => {
    const { order } = jib(
      '    "Clear."\n      ease downhaul\n    "Hoist away."\n      haul halyard, hold downhaul',
    )
    expect(order.phases[1]?.freed[0]).toMatchObject({ act: 'ease', phase: 1, belayed: true })
  })

  test('is eased again once it has been hauled in between', () => {
    const { rig, order } = jib(
      '    "Clear."\n      let go downhaul\n    "Down."\n      haul downhaul, ease halyard\n    "Up."\n      haul halyard',
    )
    expect(order.phases[2]?.freed).toEqual([])
    expect(order.phases[2]?.ease.map(row => called(rig, row))).toEqual(['downhaul'])
  })

  test('is not eased where the text holds, tends or hauls it', () => {
    for (const act of ['hold', 'tend', 'haul']) {
      const { order } = jib(`    "Hoist away."\n      haul halyard, ${act} downhaul`)
      expect(order.phases[0]?.ease, act).toEqual(act === 'haul' ? [] : [])
      expect(order.phases[0]?.answers[0]?.how).toEqual({ kind: 'here', act })
    }
  })
})

describe('hands', () => {
  test('are those of every line worked: two of a pair count twice', () => {
    const { order } = jib('    "Both."\n      haul sheets')
    expect(order.phases[0]?.haul[0]?.hands).toEqual({ known: true, value: 4 })
    expect(order.phases[0]?.hands.hauling).toEqual({ known: true, value: 4 })
  })

  test('go on from the first lines to those worked then', () => {
    const { order } = jib('    "One, then the other."\n      haul lee sheet then weather sheet and halyard')
    expect(order.phases[0]?.hands.hauling).toEqual({ known: true, value: 5 })
  })

  test('are lent by the nearest station that has some, and what still lacks is told', () => {
    const { order } = jib(
      '    "Both, and hoist."\n      haul sheets and halyard, ease downhaul',
      '\nstations\n  fore, 1 hand in a watch, 2 in all\n    works fore rail\n  after, 1 hand in a watch, 3 in all\n',
    )
    expect(order.phases[0]?.hands.stations).toEqual([
      {
        station: 'fore',
        hauling: { known: true, value: 7 },
        easing: 1,
        inAll: 2,
        inWatch: 1,
        loans: [{ from: 'after', hands: 3 }],
        short: 3,
      },
    ])
  })
})

describe.each(vessels)('the orders of $name', ({ rig, evolutions }) => {
  const phases = evolutions.sails.flatMap(({ set, douse }) =>
    [set, douse].flatMap(order => order?.phases ?? []),
  )
  const rowsOf = (rows: readonly OrderRow[]) => rows.map(({ pairKey }) => pairKey)

  test('name a counterpart of every haul on the ease side, in hand, or freed before', () => {
    const unanswered = phases.flatMap(phase => {
      const named = new Set([
        ...rowsOf([...phase.ease, ...phase.hold, ...phase.tend, ...phase.haul, ...phase.standBy]),
        ...phase.freed.map(({ pairKey }) => pairKey),
      ])
      return phase.answers
        .filter(({ counterpart }) => !named.has(counterpart.pairKey))
        .map(({ hauled, counterpart }) => `${phase.order} ${hauled.pairKey} against ${counterpart.pairKey}`)
    })
    expect(unanswered).toEqual([])
  })

  test('tell weather from lee on both tacks', () => {
    for (const { haul, ease, hold, tend } of phases)
      for (const row of [...haul, ...ease, ...hold, ...tend]) {
        if (row.reach !== 'weather' && row.reach !== 'lee') continue
        for (const wind of ['port', 'starboard'] as const) {
          const [address] = row.lines[wind]
          const side = rig.lineAt.get(address ?? '')?.side
          expect(side === wind, `${row.pairKey} with the wind from ${wind}`).toBe(row.reach === 'weather')
        }
      }
  })

  test('sum the hands of their rows', () => {
    for (const phase of phases)
      for (const row of phase.haul) {
        const lines = row.lines.port.flatMap(address => rig.lineAt.get(address) ?? [])
        const each = lines.map(({ hands }) => hands ?? 0).slice(0, row.count)
        expect(row.hands, `${phase.order} ${row.pairKey}`).toEqual({
          known: true,
          value: each.reduce((a, b) => a + b, 0),
        })
      }
  })
})

describe('the fourteen cautions', () => {
  test('keep their numbers', () => {
    expect(cautions.map(({ number }) => number)).toEqual(Array.from({ length: 14 }, (_, index) => index + 1))
  })

  test('are short enough for their boxes', () => {
    for (const { short, brief } of cautions) {
      expect(short.length, short).toBeLessThanOrEqual(42)
      expect(brief.length, brief).toBeLessThanOrEqual(20)
    }
  })

  test('stand under what governs', () => {
    expect(governingNote).toContain('govern')
  })
})
