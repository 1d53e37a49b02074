import { describe, expect, it } from 'vitest'
import { lineColumn, lineStarts } from '../../src/text/index.ts'
import { compiledText } from '../support/compiled.ts'
import { type Notebook, notebookOf, type Planted } from './notebook.ts'
import { plants } from './plants.ts'
import { seeded, someOf } from './seeded.ts'

const seed = 1847
const mostOfAKind = 2
// Each planted text is compiled whole, on a machine that may be busy.
const timeout = 60_000
const books = ['barque-harrow-tansy', 'schooner-pellow-finch'].map(notebookOf)

/** What is found in a text of the notebook's name: 'rule, line'. */
function found(book: Notebook, text: string): readonly string[] {
  const starts = lineStarts(text)
  return compiledText(text, book.name)
    .findings.filter(({ at }) => at.source === book.name)
    .map(({ rule, at }) => `${rule}, line ${lineColumn(starts, at.start).line}`)
}

const cases = Object.entries(plants).map(([name, plant], index) => {
  const random = seeded(seed + index)
  const planted = books.flatMap(book => someOf(plant(book), mostOfAKind, random).map(one => ({ book, one })))
  return { name, planted }
})

describe.each(cases)('$name', ({ planted }) => {
  it('can be planted', () => expect(planted).not.toEqual([]))

  it('is found, on its line', { timeout }, () => {
    for (const { book, one } of planted) expect(found(book, one.text)).toContain(wanted(one))
  })
})

const wanted = ({ rule, line }: Planted) => `${rule}, line ${line}`
