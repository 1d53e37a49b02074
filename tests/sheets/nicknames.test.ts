import { describe, expect, test } from 'vitest'
import { evolve } from '../../src/evolve/index.ts'
import { reckon } from '../../src/reckon/index.ts'
import { inLanguage, type Rail, type Rig, type Station, withNicknames } from '../../src/rig/index.ts'
import { stationHandbook } from '../../src/sheets/book/index.ts'
import type { Sheet } from '../../src/sheets/index.ts'
import { railStrips } from '../../src/sheets/rail-strip/index.ts'
import { reckoningTables } from '../../src/sheets/reckoning/index.ts'
import { compiledRig } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'
import { placedTexts } from '../support/placed-text.ts'

const { ruler, covers } = await installedFonts()
const setting = { ruler, covers, paper: 'A4', imprint: { digest: '', from: 'test.rig', errors: 0 } } as const
// She has lines with nicknames, a whipped rope, and was surveyed.
const { rig } = compiledRig('barquentine-otter-fennel').value

const book = (of: Rig) =>
  stationHandbook(
    { rig: of, figures: reckon(of), evolutions: evolve(of) },
    of.stationAt.get('forecastle') as Station,
    setting,
  ).value.pages
const wordsOf = (pages: readonly Sheet[], title: string) =>
  pages
    .filter(page => page.title === title)
    .flatMap(page => placedTexts(page).map(({ words }) => words))
    .join(' ')

describe('what a line is called aboard', () => {
  test('stands in the index of the handbook, and shows where to see', () =>
    expect(wordsOf(book(rig), 'Index')).toMatch(/Ox, see (?:fore )?course tack/))

  test('stands in the register, on the charts and on the strips only where it is asked for', () => {
    const rail = rig.railAt.get('FTK-P') as Rail
    const strip = (of: Rig) =>
      placedTexts(railStrips(of, rail, setting).value[0] as Sheet).map(one => one.words)
    expect(wordsOf(book(rig), 'Line register')).not.toContain('the ox')
    expect(strip(rig).join(' ')).not.toContain('ox')
    expect(wordsOf(book(withNicknames(rig)), 'Line register')).toContain('“the ox”')
    expect(strip(withNicknames(rig)).join(' ')).toContain('ox”')
  })
})

test('the register tells how a rope is whipped', () =>
  expect(wordsOf(book(rig), 'Line register')).toContain('whipped red'))

test('surveys and numbered blocks stand among the tables, the worn lines before the sound', () => {
  const tables = new Map(reckoningTables(rig, reckon(rig)).map(table => [table.id, table]))
  const cells = (id: string, column: number) =>
    tables.get(id)?.rows.map(row => (row[column]?.kind === 'words' ? row[column].words : ''))
  const conditions = cells('surveys', 1) ?? []
  expect(conditions).toContain('worn')
  expect(conditions.lastIndexOf('worn')).toBeLessThan(conditions.indexOf('sound'))
  expect(cells('marked-blocks', 0)).toEqual(rig.blocks.map(({ number }) => number))
  expect(cells('marked-blocks', 2)?.[0]).toBe('3 March 2026')
})

test('names in another language take no English plural and keep their capitals', () => {
  const of = inLanguage(rig, 'German')?.value as Rig
  const pages = stationHandbook(
    { rig: of, figures: reckon(of), evolutions: evolve(of) },
    of.stationAt.get('foremast') as Station,
    setting,
  ).value.pages
  const all = pages.flatMap(page => placedTexts(page).map(({ words }) => words)).join(' ')
  expect(all.includes('weather Geitau°')).toBe(true)
  expect(all.match(/\S+°s\b|\bgeitau\S*/g) ?? []).toEqual([])
})
