import { beforeAll, describe, expect, test } from 'vitest'
import { once } from '../../src/press/once.ts'
import { deckChart } from '../../src/sheets/deck-chart/index.ts'
import { enlarged } from '../../src/sheets/enlarged.ts'
import { inStyle, rulerIn } from '../../src/sheets/in-style.ts'
import { ink } from '../../src/sheets/ink.ts'
import { railStrips } from '../../src/sheets/rail-strip/index.ts'
import { sailPlan } from '../../src/sheets/sail-plan/index.ts'
import type { Sheet } from '../../src/sheets/sheet.ts'
import { forStrips, type Style, type StyleName, styleNames, styles } from '../../src/sheets/style.ts'
import type { Ruler } from '../../src/sheets/typeface.ts'
import { compiledRig } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'
import { flat, ids, overlaps, texts } from './boxes.ts'

let ruler: Ruler
beforeAll(async () => {
  ruler = (await installedFonts()).ruler
})

/** Plan, chart and one strip of the barque in a style, as they are printed. */
const sheetsIn = once((style: StyleName): readonly Sheet[] => {
  const { rig, figures } = compiledRig('barque-harrow-tansy').value
  const imprint = { digest: '7Q4K-9MTX', from: 'test.rig', errors: 0 }
  const setting = (of: Style) => ({ ruler: rulerIn(of, ruler), imprint, paper: 'A4', style }) as const
  const [sheet, strip] = [styles[style], forStrips(styles[style])]
  return [
    inStyle(sheet, sailPlan(rig, figures, setting(sheet)).value),
    inStyle(sheet, deckChart(rig, figures, setting(sheet)).value),
    ...rig.rails
      .slice(0, 1)
      .flatMap(rail => railStrips(rig, rail, setting(strip)).value.map(one => inStyle(strip, one))),
  ]
})

describe('the table of styles', () => {
  // Relative luminance and contrast as WCAG 2.2 defines them.
  const luminance = (colour: string) => {
    const channel = (at: number) => {
      const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
    }
    return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5)
  }
  const contrast = (a: string, b: string) => {
    const [low, high] = [luminance(a), luminance(b)].toSorted((x, y) => x - y)
    return ((high ?? 0) + 0.05) / ((low ?? 0) + 0.05)
  }

  test.each([
    ['fine', 15.9],
    ['black', 21],
    ['bold', 21],
    ['night', 16.3],
    ['night-screen', 4.75],
  ] as const)('%s sets its words at a contrast of %d', (name, expected) => {
    const { ink, paper } = styles[name].inks
    expect(contrast(ink, paper)).toBeCloseTo(expected, 1)
  })

  test.each(styleNames)(
    '%s keeps type at 4.5 : 1, lines and marks at 3 : 1 (WCAG 2.2, 1.4.3 and 1.4.11)',
    name => {
      const { inks } = styles[name]
      for (const type of ['ink', 'rig', 'more', 'less'] as const)
        expect(contrast(inks[type], inks.paper)).toBeGreaterThanOrEqual(4.5)
      expect(contrast(inks.faint, inks.paper)).toBeGreaterThanOrEqual(2.95)
    },
  )

  test('red light tells no hue: at night lightness alone tells ink from ground', () => {
    const red = (colour: string) => Number.parseInt(colour.slice(1, 3), 16)
    for (const name of ['night', 'night-screen'] as const) {
      const { inks } = styles[name]
      expect(inks.more).toBe(inks.ink)
      expect(inks.less).toBe(inks.ink)
      for (const data of ['ink', 'rig', 'faint'] as const) expect(red(inks[data])).toBeGreaterThan(200)
      expect(red(inks.paper)).toBeLessThan(16)
    }
  })

  test('bold and night are 1.41 times as heavy, and nothing is under 0.25 mm', () => {
    for (const name of ['bold', 'night', 'night-screen'] as const) {
      expect(Object.values(styles[name].weights).map(width => width.toFixed(2))).toEqual([
        '0.25',
        '0.25',
        '0.35',
        '0.49',
        '0.71',
        '0.99',
      ])
    }
  })

  test('black has no grey, and no line under 0.18 mm', () => {
    expect(new Set(Object.values(styles.black.inks))).toEqual(new Set(['#FFFFFF', '#000000']))
    expect(Math.min(...Object.values(styles.black.weights))).toBe(0.18)
  })

  test('no two inks of the fine style are alike, so that each has its own in every other', () => {
    expect(new Set(Object.values(ink)).size).toBe(Object.values(ink).length)
  })
})

describe.each(styleNames)('sheets in the style %s', name => {
  let drawn: readonly Sheet[]
  let fine: readonly Sheet[]
  beforeAll(() => {
    drawn = sheetsIn(name)
    fine = sheetsIn('fine')
  })

  test('have the addresses they have in the fine one', () => {
    const told = (sheet: Sheet) => ids(sheet.marks).filter(id => id !== 'hidden-masts')
    expect(drawn.map(told)).toEqual(fine.map(told))
  })

  test('show the inks of that style and no other', () => {
    const own = new Set(Object.values(styles[name].inks))
    const shown = drawn
      .flatMap(sheet => flat(sheet.marks))
      .flatMap(mark => (mark.kind === 'text' ? [mark.ink, mark.halo?.ink] : [mark.pen?.ink, mark.fill?.ink]))
    expect(shown.filter(colour => colour !== undefined && !own.has(colour))).toEqual([])
  })

  test('lay no word over another, and set none under 8 pt', () => {
    expect(drawn.slice(1).flatMap(overlaps)).toEqual([])
    const least = 8 * styles[name].type.times * styles[name].enlarged
    const [plan, chart] = drawn
    for (const sheet of [plan, chart])
      expect(Math.min(...texts(sheet as Sheet).map(({ type }) => type.size))).toBeGreaterThanOrEqual(
        least - 1e-9,
      )
  })

  test('are as large as they are read from afar, at a standard scale', () => {
    const { enlarged: times } = styles[name]
    expect(drawn[0]?.width).toBe(420 * times)
    const words = drawn.flatMap(texts).map(mark => mark.words)
    expect(words).toContain(times === 2 ? 'Scale 1 : 100 on A1' : 'Scale 1 : 200 on A3')
    expect(words).toContain(times === 2 ? 'Set for reading at 0.8 m' : 'Set for reading at 0.4 m')
  })
})

test('a printed ground is drawn, a bare one is not', () => {
  const [day] = sheetsIn('fine')
  const [night] = sheetsIn('night')
  expect(day?.ground).toBe(ink.paper)
  expect(night?.ground).toBeUndefined()
  expect(night?.marks[0]).toMatchObject({ fill: { ink: styles.night.inks.paper } })
})

test('a mast behind a square sail shows through in the fine style, and is dashed in the others', () => {
  const has = (style: StyleName) => ids(sheetsIn(style)[0]?.marks ?? []).includes('hidden-masts')
  expect(styleNames.map(has)).toEqual([false, true, true, true, true])
})

test('an enlarged sheet is the same, so many times as large', () => {
  const [sheet] = sheetsIn('fine')
  if (!sheet) throw new Error('no sheet')
  expect(enlarged(enlarged(sheet, 2), 0.5)).toEqual(sheet)
})
