import { describe, expect, test } from 'vitest'
import { evolve } from '../../src/evolve/index.ts'
import { reckon } from '../../src/reckon/index.ts'
import type { Rig, Station } from '../../src/rig/index.ts'
import { imposed, stationHandbook, stationStem } from '../../src/sheets/book/index.ts'
import type { Mark, PaperDocument, PaperFamily, Sheet } from '../../src/sheets/index.ts'
import { compiledRig, compiledText } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'
import { meetingTexts, placedTexts } from '../support/placed-text.ts'

const { ruler, covers } = await installedFonts()
const imprint = { digest: '7Q4K-9MTX', from: 'test.rig', errors: 0 }

const bookOf = (rig: Rig, station: Station, paper: PaperFamily = 'A4', errors = 0) =>
  stationHandbook({ rig, figures: reckon(rig), evolutions: evolve(rig) }, station, {
    ruler,
    covers,
    paper,
    imprint: { ...imprint, errors },
  })

const rigs = ['barque-harrow-tansy', 'schooner-pellow-finch'].map(name => compiledRig(name).value.rig)
const books = rigs.flatMap(rig =>
  rig.stations.map(station => ({
    name: `${rig.vessel.name}, ${station.name}`,
    rig,
    station,
    document: bookOf(rig, station).value,
  })),
)

const liveOf = (page: number, sheet: Sheet) => {
  const left = page % 2 === 0 ? sheet.width - 15.5 - 118 : 15.5
  const drop = sheet.height > 212 ? 3 : 0
  return { left, right: left + 118, top: 10 + drop, bottom: 203 + drop }
}

describe.each(books)('the handbook of $name', ({ rig, station, document }) => {
  test('sets everything inside the live area, in 8 pt or more, and nothing on anything else', () => {
    expect(faultsOf(document)).toEqual([])
  })

  test('comes out even, for a book folded and stapled', () => {
    expect(document.pages.length % 4).toBe(0)
    expect(document.pages.at(-1)?.title).toBe('Revisions')
  })

  test('tags all that is said, but for running heads and feet', () => {
    const loose = document.pages.flatMap((page, index) =>
      placedTexts(page)
        .filter(({ tags }) => tags.length === 0)
        .filter(({ box }) => index === 0 || (box.bottom > 16 && box.top < 198))
        .map(({ words }) => `${page.title}: ${words}`),
    )
    expect(loose).toEqual([])
  })

  test('begins with its name, and every page with its title', () => {
    expect(placedTexts(document.pages[0] as Sheet).some(({ tags }) => tags[0]?.role === 'H1')).toBe(true)
    const first = document.pages.slice(1).map(page => placedTexts(page).find(({ tags }) => tags.length > 0))
    expect(first.every(text => text?.tags[0]?.role === 'H2' || text?.tags[0]?.role === 'Artifact')).toBe(true)
  })

  test('has a bookmark for every page title', () => {
    const marked = new Set(document.outline.map(entry => entry.page))
    const begun = document.pages.flatMap((page, index) => (heads(page) && !isOrder(page) ? [index] : []))
    expect(begun.filter(index => !marked.has(index))).toEqual([])
  })

  test('shows every line of its rails on a chart and in the index', () => {
    const onRails = rig.lines.filter(line => line.belay && station.rails.includes(line.belay.rail))
    const charts = document.pages.filter(page => /rails/i.test(page.title) && !page.title.endsWith('to fill'))
    const turned = charts.map(page => textOf(page, 'turned')).join(' ')
    const index = document.pages
      .filter(page => page.title === 'Index')
      .map(page => textOf(page, 'all'))
      .join(' ')
    for (const line of onRails) {
      const names = [line.labelOnSail, line.labelOnMast].map(name => name.toLowerCase())
      expect(names.some(name => turned.includes(name))).toBe(true)
      expect(squeezed(index)).toContain(squeezed(line.labelOnMast.toLowerCase()))
    }
  })

  test('gives each chart a blank with the same pins at the same places, on another opening', () => {
    const keys = document.pages.filter(page =>
      document.pages.some(other => other.title === `${page.title}, to fill`),
    )
    for (const key of keys) {
      const at = document.pages.indexOf(key)
      const twin = document.pages.findIndex(page => page.title === `${key.title}, to fill`)
      expect(Math.floor((at + 1) / 2)).not.toBe(Math.floor((twin + 1) / 2))
      const pins = pinsOf(key.marks)
      expect(pins.length).toBeGreaterThan(0)
      expect(pinsOf((document.pages[twin] as Sheet).marks)).toEqual(pins)
    }
  })
})

test('holds on half a Letter sheet what it holds on A5', () => {
  const [rig] = rigs as [Rig]
  const station = rig.stationAt.get('forecastle') as Station
  const document = bookOf(rig, station, 'Letter').value
  expect(document.pages[1]?.width).toBe(139.7)
  expect(faultsOf(document)).toEqual([])
  expect(document.pages.map(page => page.title)).toEqual(
    bookOf(rig, station).value.pages.map(page => page.title),
  )
})

test('says on every page that it comes from an unsound rig, and gives no digest', () => {
  const [rig] = rigs as [Rig]
  const document = bookOf(rig, rig.stations[0] as Station, 'A4', 2).value
  for (const page of document.pages) {
    expect(textOf(page, 'all')).toContain('from a rig with 2 errors')
    expect(textOf(page, 'all')).not.toContain('7q4k')
  }
})

test('sets the same book twice alike', () => {
  const [, rig] = rigs as [Rig, Rig]
  const station = rig.stations[0] as Station
  expect(JSON.stringify(bookOf(rig, station).value)).toBe(JSON.stringify(bookOf(rig, station).value))
})

test('imposes eight pages on two sheets, outermost first', () => {
  const page = (id: number): Sheet => ({
    id: `page-${id}`,
    title: '',
    description: '',
    width: 148,
    height: 210,
    ground: undefined,
    marks: [],
  })
  const document: PaperDocument = {
    id: 'handbook-x',
    title: 'x',
    language: 'en',
    subject: '',
    pageLabels: undefined,
    outline: [],
    date: undefined,
    pages: [1, 2, 3, 4, 5, 6, 7, 8].map(page),
  }
  const booklet = imposed(document, 'A4')
  expect(booklet.id).toBe('handbook-x-booklet')
  expect(booklet.pageLabels).toEqual(['8, 1', '2, 7', '6, 3', '4, 5'])
  expect(booklet.pages[0]).toMatchObject({ width: 297, height: 210 })
})

describe('a rig that is hard to print', () => {
  const longName = 'Most Excellent Everlasting Perseverance Northern Fisheries Company Limited Ship'
  const text = (pins: number) =>
    [
      `vessel ${longName}`,
      'lines',
      ...Array.from(
        { length: 60 },
        (_, n) => `  ${letters(n)} halyard single, 8 mm braided polyester, 1 hand`,
      ),
      'rails',
      `  side rail, port and starboard, marked SR`,
      `    ${pins} pins`,
      'belay on side rail',
      ...Array.from(
        { length: 30 },
        (_, n) => `  ${n + 1}  port ${letters(n)} halyard, starboard ${letters(n + 30)} halyard`,
      ),
      'stations',
      `  ${longName.toLowerCase()}, 1 hand in a watch, 4 in all`,
      '    works side rail',
      '  idle, 1 hand in a watch, 4 in all',
      '    takes helm',
    ].join('\n')
  const rig = compiledText(text(40)).value.rig

  test.each(rig.stations.map(station => ({ station })))('prints the book of $station.name', ({ station }) => {
    const { value } = bookOf(rig, station)
    expect(value.pages.length % 4).toBe(0)
    expect(faultsOf(value)).toEqual([])
  })

  test('says that a long rail is in parts, and that no ship can be drawn', () => {
    const rules = bookOf(rig, rig.stations[0] as Station).findings.map(finding => finding.rule)
    expect(rig.rails[0]?.places.length).toBe(40)
    expect(rules).toContain('sheet/rail-split')
    expect(rules).toContain('sheet/no-outline')
  })

  test('says which name has letters that the faces lack', () => {
    const station = { ...(rig.stations[0] as Station), label: '前檣' }
    expect(bookOf(rig, station).findings.map(finding => finding.rule)).toContain('sheet/no-glyph')
  })

  test('names files by safe letters, no two alike', () => {
    const named = ['con', '../..', '前檣', 'fôre', 'fore', '-x'].map(name => ({
      ...(rig.stations[0] as Station),
      name,
    }))
    const stems = named.map(station => stationStem(station, { ...rig, stations: named }))
    expect(new Set(stems).size).toBe(stems.length)
    for (const stem of stems) expect(stem).toMatch(/^[a-z0-9][a-z0-9-]*$/)
  })
})

const letters = (n: number) => `${'abcdefghij'[n % 10]}${'klmnopqrst'[Math.floor(n / 10)]} signal`

function faultsOf(document: PaperDocument): readonly string[] {
  return document.pages.flatMap((page, index) => {
    const texts = placedTexts(page)
    const live = liveOf(index + 1, page)
    const outside = texts.filter(
      ({ box }) =>
        box.left < live.left - 0.3 ||
        box.right > live.right + 0.3 ||
        box.top < live.top ||
        box.bottom > live.bottom,
    )
    const small = texts.filter(({ size }) => size < 8)
    return [
      ...outside.map(({ words }) => `page ${index + 1}: "${words}" outside`),
      ...small.map(({ words }) => `page ${index + 1}: "${words}" too small`),
      ...meetingTexts(texts).map(pair => `page ${index + 1}: ${pair}`),
    ]
  })
}

const heads = (page: Sheet): boolean => placedTexts(page).some(({ tags }) => tags[0]?.role === 'H2')
const isOrder = (page: Sheet): boolean => /^To (set|douse)/.test(page.title)

const textOf = (page: Sheet, which: 'all' | 'turned'): string =>
  placedTexts(page)
    .filter(({ turned }) => which === 'all' || turned)
    .map(({ words }) => words)
    .join(which === 'turned' ? '' : ' ')
    .replace(/\s+/g, ' ')
    .toLowerCase()

const squeezed = (words: string): string => words.replace(/\s+/g, ' ')

// The places of all pins of a page's rails: their circles and dots, but no round part of a deed's mark.
function pinsOf(marks: readonly Mark[], isIn = false): readonly string[] {
  return marks.flatMap((mark): readonly string[] => {
    if (mark.kind === 'circle') return isIn ? [`${mark.at.x},${mark.at.y}`] : []
    if (mark.kind !== 'group' || mark.tag?.role === 'Artifact') return []
    return pinsOf(mark.marks, isIn || mark.tag?.role === 'Figure')
  })
}
