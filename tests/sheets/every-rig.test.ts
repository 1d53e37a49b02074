import { beforeAll, describe, expect, test } from 'vitest'
import type { Finding } from '../../src/findings/index.ts'
import type { Figures } from '../../src/reckon/index.ts'
import type { Rig } from '../../src/rig/index.ts'
import { deckChart } from '../../src/sheets/deck-chart/index.ts'
import { chartLayout } from '../../src/sheets/deck-chart/layout.ts'
import { crossings, type Leader, leadersOf } from '../../src/sheets/deck-chart/leaders.ts'
import { labelBoxesMeet } from '../../src/sheets/label-box.ts'
import { blankStrips, railStrips } from '../../src/sheets/rail-strip/index.ts'
import { sailPlan } from '../../src/sheets/sail-plan/index.ts'
import type { Setting } from '../../src/sheets/setting.ts'
import type { Sheet } from '../../src/sheets/sheet.ts'
import type { Ruler } from '../../src/sheets/typeface.ts'
import { compiledRig, exampleRigs } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'
import { type Box, boxesMeet, boxOf, overlaps, runsThrough, texts } from './boxes.ts'
import { allMarks, cornersOfText, textsOf, boxOf as turnedBoxOf } from './plan-marks.ts'

let ruler: Ruler
beforeAll(async () => {
  ruler = (await installedFonts()).ruler
})

const setting = (paper: Setting['paper']): Setting => ({
  ruler,
  paper,
  imprint: { digest: '7Q4K-9MTX', from: 'test.rig', errors: 0 },
  sheetNumber: { n: 2, of: 90 },
})

const cases = exampleRigs.flatMap(name => (['A4', 'Letter'] as const).map(paper => ({ name, paper })))

/** Words of which less than all stands inside the margin. */
const outside = (sheet: Sheet, margin: number): readonly string[] =>
  textsOf(sheet.marks)
    .filter(({ mark }) =>
      cornersOfText(mark).some(
        ({ x, y }) => x < margin || x > sheet.width - margin || y < margin || y > sheet.height - margin,
      ),
    )
    .map(({ mark }) => mark.words)

const under8 = (sheet: Sheet): readonly string[] =>
  texts(sheet)
    .filter(({ type }) => type.size < 8)
    .map(({ words }) => words)

/** Words that end in an ellipsis: something was cut. */
const cut = (sheet: Sheet): readonly string[] =>
  texts(sheet)
    .filter(({ words }) => words.endsWith('…'))
    .map(({ words }) => words)

describe.each(cases)('$name on the $paper family', ({ name, paper }) => {
  let rig: Rig
  let figures: Figures
  beforeAll(() => {
    const compiled = compiledRig(name).value
    rig = compiled.rig
    figures = compiled.figures
  })

  test('her plan: every word whole, in the frame and clear of all others', () => {
    const { value: sheet } = sailPlan(rig, figures, setting(paper))
    const words = textsOf(sheet.marks).map(({ mark }) => ({ words: mark.words, box: turnedBoxOf(mark) }))
    const meeting = words.flatMap((a, i) =>
      words
        .slice(i + 1)
        .filter(b => labelBoxesMeet(a.box, b.box))
        .map(b => `${a.words} on ${b.words}`),
    )
    expect({ meeting, outside: outside(sheet, 12.6), under8: under8(sheet), cut: cut(sheet) }).toEqual(clear)
  })

  test('her deck chart: no word over another, a leader or a pin, and no leaders that cross', () => {
    const { value: sheet, findings } = deckChart(rig, figures, setting(paper))
    const layout = chartLayout(rig, paper, ruler)
    const leaders = leadersOf(layout)
    expect(crossings(leaders)).toBe(0)
    expect(overLeaders(sheet, leaders)).toEqual([])
    expect(overPins(sheet)).toEqual([])
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([])
    const meeting = overlaps(sheet)
    const { margin } = layout.paper
    expect({ meeting, outside: outside(sheet, margin + 2), under8: under8(sheet), cut: cut(sheet) }).toEqual(
      clear,
    )
  })

  test('her strips and their blanks: every word whole, in the frame and clear of all others', () => {
    for (const rail of rig.rails) {
      const filled = railStrips(rig, rail, setting(paper))
      for (const sheet of [...filled.value, ...blankStrips(rig, rail, setting(paper)).value])
        expect({
          meeting: overlaps(sheet),
          outside: outside(sheet, 7),
          under8: under8(sheet),
          cut: cut(sheet),
        }).toEqual(clear)
      expect(rules(filled.findings)).toEqual([])
    }
  })
})

const clear = { meeting: [], outside: [], under8: [], cut: [] }

const rules = (findings: readonly Finding[]) => findings.map(({ rule }) => rule)

const overLeaders = (sheet: Sheet, leaders: readonly Leader[]): readonly string[] =>
  texts(sheet)
    .filter(mark => leaders.some(({ points }) => runsThrough(points, boxOf(mark))))
    .map(({ words }) => words)

function overPins(sheet: Sheet): readonly string[] {
  const pins = allMarks(sheet.marks).flatMap(({ mark, within }): readonly Box[] => {
    if (mark.kind !== 'circle' || !within.at(-1)?.startsWith('pin.')) return []
    const { at, radius } = mark
    return [{ left: at.x - radius, right: at.x + radius, top: at.y - radius, bottom: at.y + radius }]
  })
  expect(pins.length).toBeGreaterThan(0)
  return texts(sheet)
    .filter(mark => pins.some(pin => boxesMeet(boxOf(mark), pin)))
    .map(({ words }) => words)
}
