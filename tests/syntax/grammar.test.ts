import { readFileSync } from 'node:fs'
import { expect, test, vi } from 'vitest'
import { ebnf, nameKey, pageWords, placedWords, smallWords } from '../../src/syntax/index.ts'
import { RigParser } from '../../src/syntax/parser.ts'

// The first reading analyses the grammar, which takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

test('the grammar has no fault of its own', () => {
  expect(() => new RigParser({ skipValidations: false })).not.toThrow()
})

test('the reference is current: run "npm run grammar"', () => {
  expect(readFileSync(new URL('../../grammar/crosstree.ebnf', import.meta.url), 'utf8')).toBe(ebnf())
})

test('no word is of two kinds, and each is its own name key', () => {
  const words = [...smallWords, ...placedWords]
  expect(new Set(words).size).toBe(words.length)
  expect([...words, ...pageWords].map(nameKey)).toEqual([...words, ...pageWords])
})
