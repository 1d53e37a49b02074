import { describe, expect, test } from 'vitest'
import { pageWords } from '../../src/syntax/index.ts'
import { compiledText, exampleText } from '../support/compiled.ts'

const aLetterLost = (word: string) => `${word[0]}${word.slice(2)}`
const twoSwapped = (word: string) => `${word.slice(0, -2)}${word.at(-1)}${word.at(-2)}`
const oneChanged = (word: string) => `${word.slice(0, -1)}x`

/** What is found beside notes in a rig with one stretch of its text written otherwise. */
function foundIn(rig: string, stretch: RegExp, otherwise: string): readonly string[] {
  const text = exampleText(rig)
  expect(text).toMatch(stretch)
  return compiledText(text.replace(stretch, otherwise))
    .findings.filter(({ severity }) => severity !== 'note')
    .map(({ rule, message }) => `${rule}: ${message}`)
}

const rigs = [
  ['barque-harrow-tansy', [twoSwapped]],
  ['schooner-pellow-finch', [aLetterLost, oneChanged]],
] as const
const opening = (word: string) => new RegExp(`^${word}(?= |$)`, 'm')

describe.each(rigs)('in the %s a slip of the pen', (rig, slips) => {
  const said = pageWords.filter(word => opening(word).test(exampleText(rig)))

  test.each(said)('in the page word "%s" is told once', word => {
    for (const slip of slips.map(misspell => misspell(word)).filter(other => !isPageWord(other))) {
      const found = foundIn(rig, opening(word), slip)
      expect(found.slice(0, 2), slip).toContain(
        `syntax/page-word: "${slip}" is no page word, and is read as "${word}".`,
      )
      expect(found.length, found.join('\n')).toBeLessThanOrEqual(2)
    }
  })
})

describe.each(rigs)('in the %s a rail misspelt', rig => {
  const rails = [...exampleText(rig).matchAll(/^belay on ([a-z -]+?)(?= like| *#| *$)/gm)].map(
    ([, name = '']) => name,
  )
  const likes = [...exampleText(rig).matchAll(/^belay on ([a-z -]+) like ([a-z -]+?)(?= *#| *$)/gm)]

  test.each(rails)('where lines are belayed on the %s is told once, and its lines have their pins', rail => {
    const misspelt = twoSwapped(rail)
    const found = foundIn(rig, new RegExp(`^belay on ${rail}(?= like| *#| *$)`, 'm'), `belay on ${misspelt}`)
    expect(found).toEqual([
      `belay/no-such-rail: There is no rail "${misspelt}"; it is read as "${rail.replace('-', ' ')}".`,
    ])
  })

  test('where another is belayed like it is told once', () => {
    for (const [whole, rail = '', model = ''] of likes) {
      const misspelt = twoSwapped(model)
      const found = foundIn(rig, new RegExp(`^${whole}`, 'm'), `belay on ${rail} like ${misspelt}`)
      expect(found).toEqual([`name/unknown: There is no rail with lines on it above "${misspelt}".`])
    }
  })
})

const isPageWord = (word: string) => (pageWords as readonly string[]).includes(word)

test('what no vessel says is answered by all that one may say of her', () => {
  const { findings } = compiledText('vessel Mole\n  length 11.80 m, draugth 2.10 m\n')
  expect(findings.map(({ message, remedy }) => [message, remedy])).toEqual([
    [
      'There is no fact of a vessel "length".',
      expect.stringMatching(/^Of a vessel one says: waterline, .*\bbeam, draught, .*\blateral centre, .*\.$/),
    ],
    ['There is no fact of a vessel "draugth".', 'Did you mean "draught"?'],
  ])
})

test.each([
  ['bowsprit', '  bowsprit, from 1.50 m aft 4.80 m up to 9.50 m forward 8.60 m up, 420 mm thick'],
  ['boom', '  main boom, 300 mm thick'],
  ['gaff', '  main mast\n    main gaff'],
  ['yard', '  main mast\n    main yard, 11.00 m long'],
])('a %s among the masts is sent to the spars, once', (spar, entry) => {
  const { findings } = compiledText(`vessel Mole\n\nmasts\n${entry}\n`)
  const misplaced = findings.filter(({ rule }) => rule === 'syntax/clause-misplaced')
  expect(misplaced.map(({ remedy }) => remedy)).toEqual([`A ${spar} is a spar: set it under "spars".`])
})

test.each([
  ['', 'works fore rail and main rail and boom cleat'],
  [' and quarter cleat', 'works fore rail and main rail and boom cleat and quarter cleat'],
])('what a station works, with commas between%s, is told once', (last, list) => {
  const { findings } = compiledText(
    `vessel Mole\n\nstations\n  waist, 3 hands in a watch\n    works fore rail, main rail, boom cleat${last}\n`,
  )
  const told = findings.filter(({ rule }) => rule.startsWith('syntax/'))
  expect(told.map(({ message, remedy }) => [message, remedy])).toEqual([
    ['A list has "and" between its names, and no comma.', `Say "${list}".`],
  ])
})
