import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { parse, type Statement, type Tree } from '../../src/syntax/index.ts'

// The first reading analyses the grammar, which takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

const rigs = [
  'gear/square-sails',
  'gear/fore-and-aft-sails',
  'gear/standard-gear',
  'schooner-pellow-finch',
  'barque-harrow-tansy',
]
const texts = rigs.map(rig => readFileSync(new URL(`../../rigs/${rig}.rig`, import.meta.url), 'utf8'))
const [squareSails = '', , , schooner = ''] = texts
const read = (text: string) => parse({ name: 'test.rig', text })

/** Statements of a tree as 'kind name', in the order of the text. */
function statements(tree: Tree): string[] {
  const walk = (statement: Statement): string[] => [
    `${statement.kind} ${statement.name?.words}`,
    ...statement.block.flatMap(walk),
  ]
  return tree.pages.flatMap(page => [`${page.kind} ${page.name?.words}`, ...page.block.flatMap(walk)])
}

/** Names only: of a line that was spoiled it can't be told whether it was a block. */
const names = (tree: Tree) => statements(tree).map(statement => statement.replace(/^\S+ /, ''))

describe('the example rigs', () => {
  test.each(rigs.map((rig, i) => [rig, texts[i] ?? '']))('%s reads without a finding', (_, text) => {
    expect(read(text).findings).toEqual([])
  })
})

describe('spoiled texts', () => {
  test('cut off anywhere: one finding at most, and every finished statement stands', () => {
    const whole = statements(read(schooner).value)
    for (let cut = 0; cut < schooner.length; cut += 7 * 13) {
      const { value, findings } = read(schooner.slice(0, cut))
      expect(findings.length).toBeLessThanOrEqual(1)
      // The last two may still be growing: a name half typed, a mast that is yet to be called one.
      const finished = statements(value).slice(0, -2)
      expect(finished).toEqual(whole.slice(0, finished.length))
    }
  })

  test('an odd mark on any line: one finding, and nothing lost', () => {
    for (const text of [squareSails, schooner]) {
      const whole = names(read(text).value)
      const lines = text.split('\n')
      for (let i = 0; i < lines.length; i += 5) {
        const line = lines[i] ?? ''
        if (/^\s*(#|$|until|mind|aloft|answered)|"|because/.test(line)) continue
        const at = line.indexOf(' ', line.length / 2) < 0 ? line.length : line.indexOf(' ', line.length / 2)
        const spoiled = [
          ...lines.slice(0, i),
          `${line.slice(0, at)} )${line.slice(at)}`,
          ...lines.slice(i + 1),
        ].join('\n')
        const { value, findings } = read(spoiled)
        expect(findings.length, line).toBe(line.indexOf('#') >= 0 && line.indexOf('#') < at ? 0 : 1)
        expect(names(value), line).toEqual(whole)
      }
    }
  })

  test('a word too many on any line: no other line is lost', () => {
    const whole = read(schooner).value.pages.length
    const lines = schooner.split('\n')
    for (let i = 1; i < lines.length; i += 6) {
      if (lines[i] === '') continue
      const { value, findings } = read(
        [...lines.slice(0, i), `${lines[i]} then`, ...lines.slice(i + 1)].join('\n'),
      )
      expect(findings.length).toBeLessThanOrEqual(1)
      expect(value.pages.length).toBeGreaterThanOrEqual(whole - 1)
    }
  })
})

describe('any text at all', () => {
  const within = (text: string) => {
    const { findings } = read(text)
    for (const { at, fix } of findings) {
      for (const span of [at, ...(fix?.edits.map(edit => edit.at) ?? [])]) {
        expect(span.start).toBeGreaterThanOrEqual(0)
        expect(span.end).toBeGreaterThanOrEqual(span.start)
        expect(span.end).toBeLessThanOrEqual(text.length)
      }
    }
  }
  const words = [...new Set(texts.join(' ').split(/[ \n]+/))].slice(0, 600)
  const piece = fc.oneof(
    fc.constantFrom(...words),
    fc.constantFrom(
      '\n',
      '\n  ',
      '\n    ',
      '\n\t',
      ',',
      '"',
      '0',
      '-0',
      '1e999',
      '5 ft 6 in',
      '\u202e',
      '\0',
      '“',
      '½',
    ),
  )

  test('arbitrary characters never throw, and findings lie in the text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 300 }), within), { seed: 1, numRuns: 300 })
  })

  test('the words of the language in any order never throw, and findings lie in the text', () => {
    fc.assert(
      fc.property(
        fc.array(piece, { maxLength: 120 }).map(pieces => pieces.join(' ')),
        within,
      ),
      { seed: 2, numRuns: 300 },
    )
  })

  test('no number in a tree is infinite, unknown or minus zero', () => {
    const numbers = JSON.stringify(
      read('vessel A\n  waterline -0 m, beam 1e999 m, draught 1/0 m\n  hands 0 in all\n').value,
      (_, value) => {
        if (typeof value === 'number') expect(Number.isFinite(value) && !Object.is(value, -0)).toBe(true)
        return value
      },
    )
    expect(numbers).toContain('hands')
  })
})

describe('limits, each one finding before reading', () => {
  const only = (text: string) => read(text).findings.map(({ rule, message }) => `${rule}: ${message}`)

  test('size', () =>
    expect(only('# x\n'.repeat(1_100_000))).toEqual(['syntax/too-much: This text is larger than 4 MB.']))
  test('length of a line', () =>
    expect(only(`edition 1\n# ${'x'.repeat(10_001)}`)).toEqual([
      'syntax/too-much: This line is longer than 10000 characters.',
    ]))
  test('depth', () => {
    const deep = Array.from({ length: 70 }, (_, i) => `${' '.repeat(2 * i)}${i === 0 ? 'sails' : 'x'}`).join(
      '\n',
    )
    expect(only(deep)).toEqual(['syntax/too-much: This line is set in 64 levels deep.'])
  })
  test('marks that hide', () =>
    expect(only('vessel Grey\u202e Plover\0\n')).toEqual([
      "syntax/hidden-mark: A mark that can't be seen stands here (U+202E); it may make the text look like another.",
      "syntax/hidden-mark: A mark that can't be seen stands here (U+0000); it may make the text look like another.",
    ]))
  test('an empty text is a tree', () =>
    expect(read('')).toMatchObject({ value: { pages: [] }, findings: [] }))
})
