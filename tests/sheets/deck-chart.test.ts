import { describe, expect, test } from 'vitest'
import { deckRails } from '../../src/sheets/deck-chart/deck-rails.ts'
import { deckChart } from '../../src/sheets/deck-chart/index.ts'
import { chartLayout } from '../../src/sheets/deck-chart/layout.ts'
import { crossings, type Leader, leadersOf } from '../../src/sheets/deck-chart/leaders.ts'
import type { Setting } from '../../src/sheets/setting.ts'
import { compiledRig, compiledText, exampleText } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'
import { type Box, boxesMeet, boxOf, ids, overlaps, runsThrough, texts } from './boxes.ts'

const { ruler } = await installedFonts()
const setting = (paper: Setting['paper'], errors = 0): Setting => ({
  ruler,
  paper,
  imprint: { digest: '7Q4K-9MTX', from: 'test.rig', errors },
  sheetNumber: { n: 2, of: 9 },
})
const vessels = ['barque-harrow-tansy', 'schooner-pellow-finch'] as const
const papers = ['A4', 'Letter'] as const
const cases = vessels.flatMap(vessel => papers.map(paper => [vessel, paper] as const))

describe.each(cases)('the deck chart of the %s on %s', (vessel, paper) => {
  const { rig, figures } = compiledRig(vessel).value
  const { value: sheet, findings } = deckChart(rig, figures, setting(paper))
  const layout = chartLayout(rig, paper, ruler)
  const leaders = leadersOf(layout)

  test('shows every pin once and lists every line once', () => {
    const all = ids(sheet.marks)
    const expected = [
      ...rig.rails.flatMap(rail => rail.places.map(place => place.address)),
      ...rig.lines.map(line => `line.${line.address}`),
    ]
    expect(all.filter(id => /^(pin|line)\./.test(id)).sort()).toEqual(expected.sort())
    expect(new Set(all).size).toBe(all.length)
  })

  test('stands on the usual sheet without a finding', () => {
    expect(findings).toEqual([])
    expect(layout.paper.name).toBe(paper === 'A4' ? 'A3' : 'Tabloid')
  })

  test('sets no type under 8 pt and no word over another, all within the frame', () => {
    expect(texts(sheet).filter(({ type }) => type.size < 8)).toEqual([])
    expect(overlaps(sheet)).toEqual([])
    const { margin, width, height } = layout.paper
    const isOutside = ({ left, right, top, bottom }: Box) =>
      left < margin + 2 || right > width - margin - 2 || top < margin + 2 || bottom > height - margin - 2
    expect(
      texts(sheet)
        .filter(mark => isOutside(boxOf(mark)))
        .map(mark => mark.words),
    ).toEqual([])
  })

  test('leads every pin at the side straight into its number, and no leader crosses another', () => {
    expect(leaders.length).toBeGreaterThan(20)
    expect(crossings(leaders)).toBe(0)
  })

  test('letters no code of a rail over what stands on deck', () => {
    const codes = new Set(rig.rails.map(rail => rail.code))
    const lettered = texts(sheet).filter(mark => codes.has(mark.words))
    const under = rig.deck
      .filter(({ kind }) => kind !== 'raised deck')
      .flatMap(({ label, x0, x1, y0, y1 }) => {
        const [a, b] = [layout.onSheet(x0, y0), layout.onSheet(x1, y1)]
        const box = { left: a.x, right: b.x, top: a.y, bottom: b.y }
        return lettered.filter(mark => boxesMeet(boxOf(mark), box)).map(mark => `${mark.words} on ${label}`)
      })
    expect(lettered.length).toBeGreaterThan(rig.rails.length)
    expect(under).toEqual([])
  })

  test('keeps every word clear of the leaders', () => {
    const words = texts(sheet).map(mark => ({ words: mark.words, box: boxOf(mark) }))
    expect(
      words
        .filter(({ box }) => leaders.some(({ points }) => runsThrough(points, box)))
        .map(({ words }) => words),
    ).toEqual([])
  })

  test('keeps the lists of a side in ship order', () => {
    for (const side of ['port', 'starboard']) {
      for (const column of ['inner', 'outer']) {
        const lists = layout.lists.filter(list => list.group.side === side && list.group.column === column)
        const down = [...lists].sort((a, b) => a.top - b.top).map(list => list.group.x ?? Infinity)
        expect(down).toEqual([...down].sort((a, b) => a - b))
      }
    }
  })
})

test('two lists of one rail stand at one height', () => {
  const { lists } = chartLayout(compiledRig('barque-harrow-tansy').value.rig, 'A4', ruler)
  const tops = (mark: string) => lists.filter(list => list.group.mark === mark).map(list => list.top)
  expect(tops('FR')).toHaveLength(2)
  expect(new Set(tops('FR')).size).toBe(1)
})

test('a crossing of leaders is counted', () => {
  const to = (from: number, y: number): Leader => ({
    points: [
      { x: 0, y: from },
      { x: 10, y: from },
      { x: 20, y },
      { x: 22, y },
    ],
    isFree: false,
  })
  expect(crossings([to(1, 5), to(2, 6)])).toBe(0)
  expect(crossings([to(1, 6), to(2, 5)])).toBe(1)
})

test('a sheet from an unsound rig says so and carries no digest', () => {
  const { rig, figures } = compiledRig('schooner-pellow-finch').value
  const words = texts(deckChart(rig, figures, setting('A4', 3)).value).map(mark => mark.words)
  expect(words).toContain('Deck chart from a rig with 3 errors')
  expect(words).not.toContain('7Q4K-9MTX')
})

describe('other rigs', () => {
  const chart = (text: string) => {
    const { rig, figures } = compiledText(text).value
    return { rig, ...deckChart(rig, figures, setting('A4')) }
  }

  test('rails without places still give their lists', () => {
    const bare = exampleText('schooner-pellow-finch').replace(/^rails$[\s\S]*?(?=^\S)/m, page =>
      page.replace(/(\d+ pins) from .*$/gm, '$1').replace(/ at [\d.]+ m[^,\n]*/g, ''),
    )
    const { rig, value } = chart(bare)
    const all = ids(value.marks)
    expect(rig.lines.length).toBeGreaterThan(50)
    for (const line of rig.lines) expect(all).toContain(`line.${line.address}`)
    expect(overlaps(value)).toEqual([])
  })

  test('a vessel without anything gives an empty sheet', () => {
    const { value } = chart('edition 1\nvessel Nothing\n')
    expect(texts(value).map(mark => mark.words)).toContain('Nothing')
  })

  test('an empty text gives a sheet', () => {
    expect(chart('').value.id).toBe('pin-chart')
  })

  test('lists that outgrow A3 take a larger sheet, and it says so', () => {
    const { rig, figures } = compiledRig('barque-harrow-tansy').value
    const lines = rig.lines.flatMap(line => [line, { ...line, address: `${line.address}.twin` }])
    const rails = rig.rails.map(rail => ({
      ...rail,
      places: rail.places.map(place => ({
        ...place,
        lines: place.lines.flatMap(line => [line, `${line}.twin`]),
      })),
    }))
    const doubled = { ...rig, lines, rails, lineAt: new Map(lines.map(line => [line.address, line])) }
    const { value, findings } = deckChart(doubled, figures, setting('A4'))
    // 158 rows a side of 3.62 mm with their headings stand 680 mm high: more than A2, less than A1.
    expect([value.width, value.height]).toEqual([594, 841])
    expect(findings.map(finding => finding.rule)).toContain('sheet/larger-paper')
    expect(texts(value).filter(({ type }) => type.size < 8)).toEqual([])
  })
})

test('a band stands round its mast, its first pin right forward and its middle at the mast', () => {
  const { rig } = compiledText(`vessel Grey Plover
  waterline 14.00 m, beam 4.20 m
masts
  main mast, stepped 6.00 m aft 1.20 m up
    lower mast to 14.00 m up, 300 mm thick
rails
  mast band round main mast, 6 pins 2.20 m up, marked MB
`).value
  const layout = chartLayout(rig, 'A4', ruler)
  const [band] = deckRails(rig, layout)
  if (band?.plank.kind !== 'ring') throw new Error('no ring')
  const mast = layout.onSheet(6, 0)
  expect(Math.hypot(band.plank.at.x - mast.x, band.plank.at.y - mast.y)).toBeLessThan(0.01)
  expect(band.pins[0]?.at.x).toBeCloseTo(mast.x)
  expect(band.pins[0]?.at.y).toBeLessThan(mast.y)
})
