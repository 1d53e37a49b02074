import { describe, expect, test } from 'vitest'
import type { Order } from '../../src/evolve/index.ts'
import { compiledRig } from '../support/compiled.ts'
import { called, eased, hauledInOrder, hauls, phaseHauling } from './order-words.ts'

// R. H. Dana Jr, The Seaman's Friend, 5th ed., Boston 1847, ch. IX, in our own words. His vessels had one topsail
// on a mast. On the barque his topsail is two: the lower one stands for what he says of sheets and clewlines, the
// upper one for what he says of halyards, and its downhauls for the clewlines by which he brings the yard down.
// The schooner's fore topsail is a topsail as he knew it. Our orders are for a vessel on the wind.

const barque = compiledRig('barque-harrow-tansy').value
const schooner = compiledRig('schooner-pellow-finch').value
type Ship = typeof barque

function orderOf({ evolutions }: Ship, sail: string, kind: 'set' | 'douse'): Order {
  const order = evolutions.ordersAt.get(sail)?.[kind]
  if (!order) throw new Error(`the ${sail} has no order to ${kind}`)
  return order
}

const braces = ['brace']

describe('setting', () => {
  test.each(['fore course', 'main course'])('the %s: weather tack down, then the lee sheet aft', sail => {
    const { rig } = barque
    const order = orderOf(barque, sail, 'set')
    expect(hauledInOrder(rig, order, braces)).toEqual(['weather tack', 'lee sheet'])
    const tack = phaseHauling(rig, order, 'weather tack')
    const before = order.phases.slice(0, tack.number).flatMap(phase => eased(rig, phase))
    // Dana lets go or overhauls buntlines, leechlines and clewgarnets before the tack comes down, and eases the
    // lee brace for it; the yard is braced up again after.
    for (const line of ['inner buntline', 'outer buntline', 'leechline', 'weather clewgarnet', 'lee brace'])
      expect(before).toContain(line)
    expect(eased(rig, phaseHauling(rig, order, 'lee sheet'))).toContain('lee clewgarnet')
    expect(hauls(rig, order).at(-1)).toEqual(['named brace'])
  })

  test('a topsail: lee sheet, weather sheet, halyard', () => {
    const { rig } = schooner
    const order = orderOf(schooner, 'fore topsail', 'set')
    expect(hauledInOrder(rig, order, braces)).toEqual(['lee sheet', 'weather sheet', 'halyard'])
    const before = order.phases
      .slice(0, phaseHauling(rig, order, 'lee sheet').number)
      .flatMap(phase => eased(rig, phase))
    for (const line of ['buntline', 'reef tackle', 'lee clewline']) expect(before).toContain(line)
    expect(phaseHauling(rig, order, 'halyard').until).toContain('leeches are taut')
  })

  test.each(['fore', 'main'])(
    'a topsail in two, on the %s: the lower is sheeted, the upper hoisted',
    mast => {
      const { rig } = barque
      const lower = orderOf(barque, `${mast} lower topsail`, 'set')
      const upper = orderOf(barque, `${mast} upper topsail`, 'set')
      // A later seamanship manual, its title page not seen, hauls the lee sheet nearly home, the weather one home,
      // and the lee one again; so does our lower topsail, and Dana's two are its first two.
      expect(hauledInOrder(rig, lower, braces)).toEqual(['lee sheet', 'weather sheet', 'lee sheet'])
      expect(hauledInOrder(rig, upper, braces)).toEqual(['halyard'])
      const before = upper.phases
        .slice(0, phaseHauling(rig, upper, 'halyard').number)
        .flatMap(phase => eased(rig, phase))
      for (const line of ['inner buntline', 'outer buntline', 'reef tackle', 'downhaul'])
        expect(before).toContain(line)
    },
  )

  test.each([
    ['fore upper topsail', barque],
    ['main topgallant', barque],
    ['main royal', barque],
    ['fore topsail', schooner],
    ['fore topgallant', schooner],
  ] as const)('the %s: on the wind the weather brace is kept in hand and the lee one goes', (sail, ship) => {
    const hoist = phaseHauling(ship.rig, orderOf(ship, sail, 'set'), 'halyard')
    expect(eased(ship.rig, hoist)).toContain('lee brace')
    expect(hoist.tend.map(row => called(ship.rig, row))).toEqual(['weather brace'])
  })

  test.each([
    ['fore upper topsail', barque],
    ['fore topsail', schooner],
  ] as const)('the %s: the sheets of the sail above are let go before it is hoisted taut', (sail, ship) => {
    const order = orderOf(ship, sail, 'set')
    const hoist = phaseHauling(ship.rig, order, 'halyard')
    const above = order.phases
      .slice(0, hoist.number)
      .flatMap(({ ease }) => ease)
      .filter(({ pairKey, act }) => pairKey === 'fore.topgallant.sheet' && act === 'let go')
    expect(above).toHaveLength(1)
  })

  test.each([
    ['fore topgallant', barque],
    ['main topgallant', barque],
    ['fore royal', barque],
    ['main royal', barque],
    ['fore topgallant', schooner],
  ] as const)('the %s: lee sheet, weather sheet, halyard', (sail, ship) => {
    const order = orderOf(ship, sail, 'set')
    expect(hauledInOrder(ship.rig, order, braces)).toEqual(['lee sheet', 'weather sheet', 'halyard'])
  })

  test.each([
    ['fore topmast staysail', barque],
    ['inner jib', barque],
    ['flying jib', barque],
    ['jib', schooner],
  ] as const)('the %s: halyard, then the sheet', (sail, ship) => {
    expect(hauledInOrder(ship.rig, orderOf(ship, sail, 'set'), [])).toEqual(['halyard', 'lee sheet'])
  })

  test('the spanker: topping lift, then the outhauls, and trimmed by sheet and vang', () => {
    const { rig } = barque
    const order = orderOf(barque, 'spanker', 'set')
    const [first, ...rest] = hauledInOrder(rig, order, ['preventer'])
    expect(first).toBe('weather topping lift')
    expect(rest).toEqual(['peak outhaul', 'foot outhaul', 'named sheet', 'weather vang'])
    expect(eased(rig, phaseHauling(rig, order, 'weather topping lift'))).toContain('lee topping lift')
    const brails = order.phases.flatMap(({ ease }) => ease).filter(({ pairKey }) => pairKey.endsWith('brail'))
    expect(brails.map(({ pairKey, after }) => [pairKey, after])).toEqual([
      ['spanker.peak-brail', false],
      ['spanker.foot-brail', false],
      ['spanker.throat-brail', true],
    ])
  })
})

describe('taking in', () => {
  test.each(['fore course', 'main course'])('the %s, fresh: weather clew, lee clew, then the foot', sail => {
    const { rig } = barque
    const order = orderOf(barque, sail, 'douse')
    const hauled = hauledInOrder(rig, order, braces)
    expect(hauled.slice(0, 2)).toEqual(['weather clewgarnet', 'lee clewgarnet'])
    // In a light wind Dana lets tack and sheet go at once, but hauls the same lines.
    expect(new Set(hauled)).toEqual(
      new Set(['weather clewgarnet', 'lee clewgarnet', 'inner buntline', 'outer buntline', 'leechline']),
    )
    expect(hauls(rig, order).filter(names => names.includes('leechline'))).toHaveLength(1)
    expect(eased(rig, phaseHauling(rig, order, 'weather clewgarnet'))).toContain('weather tack')
    expect(eased(rig, phaseHauling(rig, order, 'lee clewgarnet'))).toContain('lee sheet')
  })

  test('a topsail, the yard braced up: clewlines and reef tackles, weather clew, lee clew, buntlines', () => {
    const { rig } = schooner
    const order = orderOf(schooner, 'fore topsail', 'douse')
    expect(hauledInOrder(rig, order, braces)).toEqual([
      'clewline',
      'reef tackle',
      'weather clewline',
      'lee clewline',
      'lee buntline',
      'weather buntline',
    ])
    expect(eased(rig, phaseHauling(rig, order, 'clewline'))).toEqual(['halyard'])
    expect(eased(rig, phaseHauling(rig, order, 'weather clewline'))).toEqual(['weather sheet'])
    expect(eased(rig, phaseHauling(rig, order, 'lee clewline'))).toEqual(['lee sheet'])
    const weatherBrace = phaseHauling(rig, order, 'weather brace')
    expect(weatherBrace.number).toBeLessThan(phaseHauling(rig, order, 'weather clewline').number)
    expect(hauls(rig, order).at(-1)).toEqual(['brace'])
  })

  test.each(['fore', 'main'])(
    'a topsail in two, on the %s: the yard down by its downhauls, weather clew first',
    mast => {
      const { rig } = barque
      const upper = orderOf(barque, `${mast} upper topsail`, 'douse')
      const [first, ...gathered] = hauledInOrder(rig, upper, braces)
      expect(first).toBe('downhaul')
      expect(eased(rig, phaseHauling(rig, upper, 'downhaul'))).toEqual(['halyard'])
      expect(new Set(gathered)).toEqual(
        new Set([
          'lee inner buntline',
          'lee outer buntline',
          'weather inner buntline',
          'weather outer buntline',
          'reef tackle',
        ]),
      )
      const lower = hauledInOrder(rig, orderOf(barque, `${mast} lower topsail`, 'douse'), [
        ...braces,
        'buntline',
      ])
      expect(lower).toEqual(['weather clewline', 'lee clewline'])
    },
  )

  test.each([
    ['fore topgallant', barque],
    ['main royal', barque],
    ['fore topgallant', schooner],
  ] as const)(
    'the %s, braced up: clew down, lee clew up before the weather, then the buntlines',
    (sail, ship) => {
      const { rig } = ship
      const order = orderOf(ship, sail, 'douse')
      expect(hauledInOrder(rig, order, braces)).toEqual([
        'clewline',
        'lee clewline',
        'weather clewline',
        'lee buntline',
        'weather buntline',
      ])
      expect(eased(rig, phaseHauling(rig, order, 'clewline'))).toEqual(['halyard'])
      expect(hauls(rig, order).at(-1)).toEqual(['brace'])
    },
  )

  test.each([
    ['fore topmast staysail', barque],
    ['outer jib', barque],
    ['fore staysail', schooner],
  ] as const)('the %s: the downhaul, as the halyard goes and the sheet is eased', (sail, ship) => {
    const { rig } = ship
    const order = orderOf(ship, sail, 'douse')
    expect(hauledInOrder(rig, order, ['sheet'])).toEqual(['downhaul'])
    const down = phaseHauling(rig, order, 'downhaul')
    expect(eased(rig, down)).toEqual(['halyard'])
    const upToThen = order.phases.slice(0, down.number).flatMap(phase => eased(rig, phase))
    expect(upToThen).toContain('lee sheet')
  })

  test('the spanker: boom amidships, outhauls eased, the lee brails first and the weather ones after', () => {
    const { rig } = barque
    const order = orderOf(barque, 'spanker', 'douse')
    const hauled = hauledInOrder(rig, order, [])
    const brails = hauled.filter(name => name.includes('brail'))
    expect(hauled.indexOf('sheet')).toBeLessThan(hauled.indexOf(brails[0] ?? ''))
    for (const part of ['foot', 'throat', 'peak'])
      expect(brails.indexOf(`lee ${part} brail`)).toBeLessThan(brails.indexOf(`weather ${part} brail`))
    expect(eased(rig, phaseHauling(rig, order, 'lee throat brail'))).toContain('foot outhaul')
    expect(eased(rig, phaseHauling(rig, order, 'lee peak brail'))).toContain('peak outhaul')
    expect(hauls(rig, order).at(-1)).toContain('vang')
    expect(order.phases.flatMap(phase => eased(rig, phase))).toContain('topping lift')
  })
})

describe('halyards, ch. III', () => {
  const lineOf = (address: string) => {
    const line = barque.rig.lineAt.get(address)
    if (!line) throw new Error(`no ${address}`)
    return line
  }

  test('topsail halyards: the fore one to port, the main one to starboard; topgallant halyards across from them', () => {
    const sides = ['fore', 'main'].map(mast => [
      lineOf(`${mast}.upper-topsail.halyard`).belay?.side,
      lineOf(`${mast}.topgallant.halyard`).belay?.side,
    ])
    expect(sides).toEqual([
      ['port', 'starboard'],
      ['starboard', 'port'],
    ])
  })

  test('a topsail halyard is a runner with a luff: two times three', () => {
    for (const mast of ['fore', 'main'])
      expect(lineOf(`${mast}.upper-topsail.halyard`).purchase).toEqual(['tye', 'runner', 'luff'])
  })
})
