import { describe, expect, test } from 'vitest'
import { type Figure, metresPerSecond, newtons, point3 } from '../../../src/measure/index.ts'
import { type Assumptions, type LoadFigures, reckon, usual } from '../../../src/reckon/index.ts'
import { pullByMoments } from '../../../src/reckon/load/moments.ts'
import { compiledRig, compiledText } from '../../support/compiled.ts'

const value = <Q>(figure: Figure<Q> | undefined): Q => {
  if (!figure?.known) throw new Error(figure?.because ?? 'no figure')
  return figure.value
}
const { rig } = compiledRig('barque-harrow-tansy').value
const loadsOf = (assumptions: Assumptions) => reckon(rig, assumptions).loads()
const loads = loadsOf(usual)
const of = (words: string, all: ReadonlyMap<string, LoadFigures> = loads): LoadFigures => {
  const line = rig.lines.find(one => one.words === words)
  const figures = all.get(line?.address ?? '')
  if (!figures) throw new Error(`there is no ${words}`)
  return figures
}

test('the worked example of the page: the fore topgallant halyard', () => {
  const halyard = of('fore topgallant halyard')
  expect(value(halyard.load).hauled).toBeCloseTo(6229, -1)
  expect(value(halyard.pull)).toBeCloseTo(2907, -1)
  expect(value(halyard.hands)).toBe(13)
  expect(value(halyard.safety)).toBeCloseTo(18, 0)
})

// Common practice, no source: what a practised watch sends to these halyards, against hands of 225 N each.
test.each([
  ['fore upper topsail halyard', 12, 16],
  ['fore topgallant halyard', 8, 15],
  ['fore royal halyard', 5, 9],
  ['fore course sheet', 5, 8],
  ['outer jib halyard', 3, 6],
  // Two or three of 300 N each.
  ['spanker topping lift', 3, 5],
])('common practice: the %s asks for %d to %d hands', (words, least, most) => {
  const hands = value(of(words).hands)
  expect(hands).toBeGreaterThanOrEqual(least)
  expect(hands).toBeLessThanOrEqual(most)
})

describe('wind', () => {
  const blown = loadsOf({ ...usual, wind: metresPerSecond(8 * Math.SQRT2) })

  test('stronger by the root of two doubles what the wind alone loads', () => {
    for (const words of [
      'fore course sheet',
      'fore course tack',
      'fore royal brace',
      'outer jib sheet',
      'spanker vang',
    ]) {
      expect(value(of(words, blown).load).hauled / value(of(words).load).hauled).toBeCloseTo(2, 9)
    }
  })

  test('leaves what weight alone loads as it was', () => {
    for (const words of ['fore course clewgarnet', 'fore royal buntline', 'outer jib halyard']) {
      expect(value(of(words, blown).load).hauled).toBe(value(of(words).load).hauled)
    }
  })
})

describe('a yard that no sail is bent to', () => {
  const { rig, figures } = compiledRig('schooner-pellow-finch').value
  const loadOf = (words: string) => {
    const line = rig.lines.find(one => one.words === words)
    return value(figures.loads().get(line?.address ?? '')?.load)
  }

  test('is braced for the sail that is sheeted to it, and its lifts bear the yard alone', () => {
    const topsail = figures.sailLoads().get('fore topsail')
    expect(loadOf('fore yard brace').hauled).toBeCloseTo(0.2 * value(topsail).force, 6)
    const half = (1.3 * 305 * 9.80665) / 2
    expect(loadOf('fore yard lift').borne).toBeCloseTo(half, 6)
    expect(loadOf('fore yard lift').hauled).toBeCloseTo(half / 4, 6)
  })
})

describe('every line of the barque', () => {
  test('is reckoned, but the ensign halyard, and bears no less in strong wind than in hand', () => {
    for (const line of rig.lines) {
      const { load, strain, pull } = loads.get(line.address) ?? {}
      if (line.words === 'ensign halyard') {
        expect(load).toEqual({
          known: false,
          because: 'There is no method for the load of a line that hoists the ensign.',
        })
        continue
      }
      expect(value(load).borne).toBeGreaterThanOrEqual(value(load).hauled)
      expect(value(strain)).toBeGreaterThanOrEqual(value(pull))
    }
  })

  test('port and starboard of a pair are loaded alike', () => {
    for (const [, [one, other]] of rig.pairAt) {
      if (!one || !other) continue
      expect(loads.get(other.address)?.load).toEqual(loads.get(one.address)?.load)
    }
  })

  test('an old, knotted rope keeps a quarter and a ninth of its safety', () => {
    const worn = loadsOf({ ...usual, end: 'knotted', age: 'old' })
    expect(value(of('fore royal sheet', worn).safety) / value(of('fore royal sheet').safety)).toBeCloseTo(
      (0.5 * 0.5) / 0.9,
      9,
    )
  })

  test('twice the pull of a hand asks for half the hands, rounded up', () => {
    const strong = loadsOf({ ...usual, hands: { hand: newtons(450), loss: 0 } })
    for (const { address } of rig.lines) {
      const [pull, hands] = [loads.get(address)?.pull, strong.get(address)?.hands]
      if (pull?.known) expect(value(hands)).toBe(Math.ceil(pull.value / 450))
    }
  })
})

describe('what is held up by moments', () => {
  const gaff = { inner: point3(0, 0, 10), outer: point3(8, 0, 10) }

  test('a level gaff held straight up at its end pulls half its weight', () => {
    expect(pullByMoments({ ...gaff, fastAt: gaff.outer, towards: point3(8, 0, 20) })).toBeCloseTo(0.5, 12)
  })

  test('held at an angle it pulls more', () => {
    expect(pullByMoments({ ...gaff, fastAt: gaff.outer, towards: point3(0, 0, 18) })).toBeCloseTo(
      0.5 * Math.SQRT2,
      12,
    )
  })

  test('a line along the gaff holds nothing up', () => {
    expect(pullByMoments({ ...gaff, fastAt: gaff.outer, towards: point3(0, 0, 10.1) })).toBeUndefined()
    expect(pullByMoments({ ...gaff, fastAt: gaff.inner, towards: gaff.inner })).toBeUndefined()
  })
})

describe('what can not be reckoned says why, and the rest is reckoned', () => {
  const { rig } = compiledText(`vessel Mole
  cutter

masts
  mast, stepped 5.00 m aft 1.00 m up, raked 0 deg aft
    lower mast to 12.00 m up, 200 mm thick

stays
  jib stay from 5.00 m aft 11.00 m up to 0.00 m aft 1.50 m up

sails
  jib, headsail on jib stay
    tack 0.20 m aft 2.00 m up, head 4.60 m aft 10.00 m up, clew 4.00 m aft 2.00 m up

lines
  first halyard single, 12 mm spaghetti, rove gun, 2 hands
    hoists ensign on mast
    through 5.00 m aft 0.20 m out 11.00 m up to 4.00 m aft 2.00 m up
  second halyard single, 12 mm manila, 2 hands
    hoists ensign on mast
`).value
  const loads = reckon(rig).loads()
  const because = (words: string, what: keyof LoadFigures) => {
    const figure = loads.get(rig.lines.find(line => line.words === words)?.address ?? '')?.[what]
    return figure?.known === false ? figure.because : ''
  }

  test('rope of no known material', () => {
    expect(because('first halyard', 'strength')).toBe('There is no table of strength for "spaghetti".')
  })

  test('no purchase, and no lead', () => {
    expect(because('second halyard', 'tackle')).toBe('No purchase is said.')
    expect(because('second halyard', 'leads')).toMatch(/No purchase|lead/)
    expect(because('second halyard', 'hands')).not.toBe('')
  })
})
