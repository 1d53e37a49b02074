import { unitSpellings } from '../../measure/index.ts'
import { pageWords, placedWords, proseWords, smallWords } from '../../syntax/index.ts'

/** What an editor colours in a rig file: a TextMate grammar as data, its patterns made from the language's own words. */
export function editorGrammar(): unknown {
  return {
    $schema: 'https://raw.githubusercontent.com/martinring/tmlanguage/master/tmlanguage.json',
    name: 'Crosstree rig',
    scopeName: 'source.crosstree.rig',
    fileTypes: ['rig'],
    patterns: [
      { name: 'comment.line.number-sign.crosstree', match: '(?:^|(?<=\\s))#.*$' },
      { name: 'string.quoted.double.crosstree', match: '"[^"]*"?|“[^”“"]*[”“"]?|«[^»]*»?' },
      {
        match: `^(${either(pageWords)})${wordEnd}`,
        captures: { 1: { name: 'keyword.control.page.crosstree' } },
      },
      {
        match: `${wordStart}(${either(proseWords).replaceAll(' ', '\\s+')})${wordEnd}(${prose})`,
        captures: { 1: { name: 'keyword.other.crosstree' }, 2: { name: 'string.unquoted.crosstree' } },
      },
      {
        name: 'constant.numeric.crosstree',
        match: `${wordStart}-?(?:${number})(?:\\s*(?:${either(unitSpellings)})(?![\\p{L}\\p{N}]))?`,
      },
      { name: 'keyword.other.crosstree', match: `${wordStart}allow(?=\\s+[^\\s,/]+/[^\\s,/]+)` },
      { name: 'keyword.other.crosstree', match: `${wordStart}(?:${either(smallWords)})${wordEnd}` },
      { name: 'support.constant.crosstree', match: `${wordStart}(?:${either(placedWords)})${wordEnd}` },
      { name: 'punctuation.separator.crosstree', match: ',' },
    ],
  }
}

const wordStart = "(?<![\\p{L}\\p{N}'’./-])"
const wordEnd = "(?![\\p{L}\\p{N}'’./-])"
const number = '\\d+(?:[.,]\\d+)?(?:\\s+\\d+/\\d+)?(?:/\\d+)?[½¼¾]?|[½¼¾]'
const prose = '(?:[^#]|(?<=\\S)#)*'

/** Any of some words; a longer one is tried before one that it begins with. */
const either = (words: readonly string[]) =>
  [...words]
    .sort((a, b) => b.length - a.length || (a < b ? -1 : 1))
    .map(word => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('|')
