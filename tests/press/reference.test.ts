import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { beforeAll, describe, expect, test } from 'vitest'
import { createOnigScanner, createOnigString, loadWASM } from 'vscode-oniguruma'
import textmate from 'vscode-textmate'
import { editorGrammar, railroad } from '../../src/press/reference/index.ts'
import { grammarRules, pageWords } from '../../src/syntax/index.ts'
import { exampleText } from '../support/compiled.ts'
import { elementsOf } from '../support/xml.ts'

const grammar = new URL('../../grammar/', import.meta.url)

describe('railroad diagrams', () => {
  const rules = grammarRules()

  test('there is one for each rule and none too many: run "npm run grammar"', () => {
    expect(readdirSync(new URL('railroads', grammar)).sort()).toEqual(
      rules.map(({ name }) => `${name}.svg`).sort(),
    )
  })

  test.each(rules.map(rule => [rule.name, rule] as const))('%s is current, and sound SVG', (name, rule) => {
    const svg = readFileSync(new URL(`railroads/${name}.svg`, grammar), 'utf8')
    expect(svg).toBe(railroad(rule))
    expect(elementsOf(svg)[0]?.name).toBe('svg')
  })
})

describe('what editors colour by, read by the library that editors read it with', () => {
  const require = createRequire(import.meta.url)
  let coloured: (line: string) => readonly (readonly [words: string, scope: string])[]

  beforeAll(async () => {
    await loadWASM(readFileSync(require.resolve('vscode-oniguruma/release/onig.wasm')).buffer)
    const registry = new textmate.Registry({
      onigLib: Promise.resolve({ createOnigScanner, createOnigString }),
      loadGrammar: async () => textmate.parseRawGrammar(JSON.stringify(editorGrammar()), 'rig.json'),
    })
    const loaded = await registry.loadGrammar('source.crosstree.rig')
    coloured = line =>
      (loaded?.tokenizeLine(line, textmate.INITIAL).tokens ?? []).map(
        ({ startIndex, endIndex, scopes }) =>
          [line.slice(startIndex, endIndex), scopes.at(-1) ?? ''] as const,
      )
  })

  test('it is current: run "npm run grammar"', () => {
    const written = readFileSync(new URL('crosstree.tmLanguage.json', grammar), 'utf8')
    expect(JSON.parse(written)).toEqual(editorGrammar())
  })

  test('page words only at the margin', () => {
    expect(coloured('sails')).toEqual([['sails', 'keyword.control.page.crosstree']])
    expect(coloured('  sails')).toEqual([['  sails', 'source.crosstree.rig']])
    expect(coloured('  set-bolt')).toEqual([['  set-bolt', 'source.crosstree.rig']])
  })

  test('measures with their units, prose to the line’s end, remarks, quoted words', () => {
    expect(coloured('  foot 41 ft 6 in wide, called "Fore # foot"  # as built')).toEqual([
      ['  foot ', 'source.crosstree.rig'],
      ['41 ft', 'constant.numeric.crosstree'],
      [' ', 'source.crosstree.rig'],
      ['6 in', 'constant.numeric.crosstree'],
      [' ', 'source.crosstree.rig'],
      ['wide', 'support.constant.crosstree'],
      [',', 'punctuation.separator.crosstree'],
      [' ', 'source.crosstree.rig'],
      ['called', 'keyword.other.crosstree'],
      [' ', 'source.crosstree.rig'],
      ['"Fore # foot"', 'string.quoted.double.crosstree'],
      ['  ', 'source.crosstree.rig'],
      ['# as built', 'comment.line.number-sign.crosstree'],
    ])
    expect(coloured('      until the leeches are taut')).toContainEqual([
      ' the leeches are taut',
      'string.unquoted.crosstree',
    ])
  })

  test('every page of the barque is found, and no number is left plain', () => {
    const lines = exampleText('barque-harrow-tansy').split('\n')
    const pages = lines.filter(line => pageWords.some(word => new RegExp(`^${word}\\b`).test(line)))
    const found = lines.filter(line =>
      coloured(line).some(([, scope]) => scope === 'keyword.control.page.crosstree'),
    )
    expect(found).toEqual(pages)
    const plain = lines.flatMap(line =>
      coloured(line).filter(([, scope]) => scope === 'source.crosstree.rig'),
    )
    expect(plain.filter(([words]) => /(?<![\p{L}'-])\d/u.test(words))).toEqual([])
  })
})
