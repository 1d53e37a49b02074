import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { fair } from '../../src/fair/index.ts'
import { parse } from '../../src/syntax/index.ts'
import { compiledText } from '../support/compiled.ts'
import { remarked, scrambled } from './scrambled.ts'

const folder = new URL('../../rigs/', import.meta.url)
const texts = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .map(file => file.replaceAll('\\', '/'))
  .filter(file => file.endsWith('.rig'))
  .map(name => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }))
const vessels = texts.filter(({ name }) => !name.includes('/'))

/** A text set fair; it must be sound. */
function faired(text: string, name = 'test.rig'): string {
  const { value, findings } = fair({ name, text })
  expect(findings).toEqual([])
  return value
}

/** A piece of a tree or a rig without the places it was read from, and with the blanks of a measure as one. */
const placeless = (piece: unknown): unknown =>
  JSON.parse(
    JSON.stringify(piece, (key, value) => {
      if (key === 'span' || key === 'belaySpan' || key === 'sources' || key === 'source') return undefined
      if (key === 'written' && typeof value === 'string') return value.replace(/\s+/g, ' ')
      return value instanceof Map ? [...value] : value
    }),
  )
const treeOf = (text: string, name: string) => placeless(parse({ name, text }).value.pages)
const rigOf = (text: string, name: string) => placeless(compiledText(text, name).value.rig)

/** All that the text says, in its order, without its spacing. */
const wordsOf = (text: string) => text.replace(/\s+/g, '')

describe('every rig and every gear', () => {
  it.each(texts)('$name says the same when it is fair, and is fair then', ({ name, text }) => {
    const once = faired(text, name)
    expect(faired(once, name)).toBe(once)
    expect(treeOf(once, name)).toEqual(treeOf(text, name))
    expect(once.split('\n').map(wordsOf)).toEqual(text.split('\n').map(wordsOf))
  })

  it.each(texts)('$name says the same after all its spacing was drawn anew', ({ name, text }) => {
    const tree = treeOf(text, name)
    fc.assert(
      fc.property(scrambled({ name, text }), other => {
        const once = faired(other, name)
        expect(faired(once, name)).toBe(once)
        expect(treeOf(once, name)).toEqual(tree)
        expect(wordsOf(once)).toBe(wordsOf(text))
        expect(once.split(/\r\n|\r|\n/)).toHaveLength(text.split('\n').length)
        expect(once).not.toMatch(/[ \t]+$/m)
      }),
      { numRuns: 2 },
    )
  })

  it.each(texts)(
    '$name says the same with remarks and blank lines wherever they may stand',
    ({ name, text }) => {
      const [between] = fc.sample(remarked({ name, text }), { numRuns: 1, seed: 7 })
      const source = { name, text: between ?? '' }
      expect(source.text.length).toBeGreaterThan(text.length)
      const [other = ''] = fc.sample(scrambled(source), { numRuns: 1, seed: 7 })
      const once = faired(other, name)
      expect(faired(once, name)).toBe(once)
      expect(treeOf(once, name)).toEqual(treeOf(text, name))
      expect(wordsOf(once)).toBe(wordsOf(source.text))
    },
  )

  it.each(vessels)('$name compiles to the same rig, figure for figure', ({ name, text }) => {
    const [once] = fc
      .sample(scrambled({ name, text }), { numRuns: 1, seed: 25 })
      .map(other => faired(other, name))
    expect(rigOf(once ?? '', name)).toEqual(rigOf(text, name))
  })
})

it('finds the texts that come with the program fair', () => {
  expect(texts.filter(({ name, text }) => faired(text, name) !== text).map(({ name }) => name)).toEqual([])
})

describe('the margins', () => {
  test('are two spaces a level, whatever they were', () => {
    expect(
      faired(
        'sails\n      jib, headsail on jib stay\n          gear jib\n\t\t\tsheet 14 mm\nstays\n\tjib stay\n',
      ),
    ).toBe('sails\n  jib, headsail on jib stay\n    gear jib\n      sheet 14 mm\nstays\n  jib stay\n')
  })

  test('of a line one column off are those of its neighbours', () => {
    expect(faired('spars\n  fore yard, 9 m long\n   main yard, 10 m long\n')).toBe(
      'spars\n  fore yard, 9 m long\n  main yard, 10 m long\n',
    )
  })

  test('of a remark alone are those it stood nearest to', () => {
    const text =
      'spars\n   # of the fore mast\n   fore yard, 9 m long\n      # set in\n# at the margin\nstays\n'
    expect(faired(text)).toBe(
      'spars\n  # of the fore mast\n  fore yard, 9 m long\n  # set in\n# at the margin\nstays\n',
    )
  })
})

describe('the blanks', () => {
  test('are one between words, none before a comma, one behind it, none at the end', () => {
    expect(faired('spars\n  fore   yard ,9  m\tlong,264 mm thick  \n')).toBe(
      'spars\n  fore yard, 9 m long, 264 mm thick\n',
    )
  })

  test('stay as they are in prose and between quotation marks, and remarks keep their column', () => {
    const text =
      'gear jib\n  to set\n    "Hoist  away."\n      until   the luff  is straight    # two  blanks\n'
    expect(faired(text)).toBe(
      'gear jib\n  to set\n    "Hoist  away."\n      until the luff  is straight      # two  blanks\n',
    )
  })

  test('stay where columns were set by hand, by their beginnings or by their ends', () => {
    const table =
      'stays\n' +
      '  fore stay       from  8.01 m aft 13.20 m up to 0.30 m forward  2.92 m up, 24 mm thick\n' +
      '  outer jib stay  from 18.26 m aft  9.00 m up to 5.00 m forward 14.31 m up, 16 mm thick\n'
    expect(faired(table)).toBe(table)
  })

  test('stay in columns with lines set in between', () => {
    const rails =
      'rails\n' +
      '  bowsprit rack,  port and starboard, marked BR\n' +
      '    3 pins from 1.20 m aft 0.50 m out to 1.70 m aft 0.65 m out, 2.70 m up    # at the heel\n' +
      '  fore rail,      port and starboard, marked FR\n'
    expect(faired(rails)).toBe(rails)
  })

  test('go where a column was left by its neighbour', () => {
    expect(faired('spars\n  fore yard,   9 m long\n  mizzen topsail yard, 10 m long\n')).toBe(
      'spars\n  fore yard, 9 m long\n  mizzen topsail yard, 10 m long\n',
    )
  })
})

describe('a text', () => {
  test('keeps the line ends it began with, and its blank lines; the last line is ended', () => {
    expect(faired('spars\r\n\r\n\r\n  fore yard, 9 m long\n\t \n  main yard, 9 m long')).toBe(
      'spars\r\n\r\n\r\n  fore yard, 9 m long\r\n\r\n  main yard, 9 m long\r\n',
    )
  })

  test('that is empty stays empty', () => {
    expect(['', '\n', '# a remark\n'].map(text => fair({ name: 'test.rig', text }).value)).toEqual([
      '',
      '\n',
      '# a remark\n',
    ])
  })

  test('that can not be read soundly is not touched, and it is said why', () => {
    const text = 'spars\n  fore   yard, 9 long\n'
    const { value, findings } = fair({ name: 'test.rig', text })
    expect(value).toBe(text)
    expect(findings.map(({ rule }) => rule)).toEqual(['measure/unit-missing'])
  })

  test('of any kind is given back whole, or refused', () => {
    const rows = fc.array(fc.constantFrom(...texts.flatMap(({ text }) => text.split('\n'))), {
      maxLength: 30,
    })
    fc.assert(
      fc.property(rows, fc.string(), (lines, more) => {
        const text = `${lines.join('\n')}\n${more}`
        const { value, findings } = fair({ name: 'test.rig', text })
        if (findings.length > 0) expect(value).toBe(text)
        else {
          expect(wordsOf(value)).toBe(wordsOf(text))
          expect(fair({ name: 'test.rig', text: value }).value).toBe(value)
        }
      }),
      { numRuns: 300 },
    )
  })
})
