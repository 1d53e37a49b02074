import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { pageWords, placedWords, proseWords, smallWords } from '../../src/syntax/index.ts'
import { compiledText } from '../support/compiled.ts'

const folder = new URL('../../grammar/statements/', import.meta.url)
const pages = readdirSync(folder)
  .sort()
  .map(file => ({ word: file.replace(/\.md$/, ''), text: readFileSync(new URL(file, folder), 'utf8') }))

describe('the pages of the statements', () => {
  it('are one for each page word', () => {
    expect(pages.map(({ word }) => word)).toEqual([...pageWords].sort())
  })

  it.each(pages.map(({ word, text }) => [word, text] as const))(
    '%s: its examples are clean',
    (word, text) => {
      const examples = [...text.matchAll(/^```rig\n(.*?)^```$/gms)].map(([, example = '']) => example)
      expect(examples.some(example => new RegExp(`^${word}`, 'm').test(example))).toBe(true)
      const found = examples.flatMap(example => compiledText(example).findings)
      expect(
        found.filter(({ severity }) => severity !== 'note').map(({ rule, message }) => `${rule}: ${message}`),
      ).toEqual([])
      expect(found.filter(({ rule }) => rule === 'allow/matches-nothing')).toEqual([])
    },
  )

  it.each(pages.map(({ word, text }) => [word, text] as const))('%s: its links lead somewhere', (_, text) => {
    for (const [, target = ''] of text.matchAll(/\]\(([^)]+)\)/g))
      expect(() => readFileSync(new URL(target, folder)), target).not.toThrow()
  })

  it('speak of every word of the language', () => {
    const all = pages.map(({ text }) => text).join('\n')
    const unsaid = [...smallWords, ...placedWords, ...proseWords].filter(
      word => !new RegExp(`(?<![\\w-])${word}(?![\\w-])`).test(all),
    )
    expect(unsaid).toEqual([])
  })
})
