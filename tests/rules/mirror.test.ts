import { describe, expect, it } from 'vitest'
import { lineColumn, lineStarts } from '../../src/text/index.ts'
import { compiledText } from '../support/compiled.ts'
import { notebooks } from './notebook.ts'
import { berths } from './plants/berths.ts'
import { seeded, someOf } from './seeded.ts'

/** Port read for starboard and starboard for port, everywhere but in "port and starboard". */
function mirrored(text: string): string {
  return text.replace(/port and starboard|\bport\b|\bstarboard\b/g, side =>
    side === 'port' ? 'starboard' : side === 'starboard' ? 'port' : side,
  )
}

/** Findings by line, rule and words. The words are sorted: a list of both sides begins with port on either tack. */
function found(text: string): readonly string[] {
  const starts = lineStarts(text)
  const { findings } = compiledText(text)
  return findings
    .filter(({ at }) => at.source === 'test.rig')
    .map(({ severity, rule, at, message }) => {
      const words = message
        .replaceAll(/[.,;:]/g, '')
        .split(' ')
        .sort()
        .join(' ')
      return `line ${lineColumn(starts, at.start).line}: ${severity} ${rule}: ${words}`
    })
    .sort()
}

const asMirrored = (findings: readonly string[]) =>
  findings.map(finding => {
    const [line, severity, rest = ''] = finding.split(': ')
    return `${line}: ${severity}: ${mirrored(rest).split(' ').sort().join(' ')}`
  })

const timeout = 120_000
const seed = 1853
const books = notebooks()

describe.each(books)('$name', ({ lines }) => {
  const text = lines.join('\n')

  it('is no worse in a mirror', { timeout }, () => {
    expect(text.match(/\bport\b|\bstarboard\b/)).not.toBeNull()
    expect(asMirrored(found(mirrored(text))).sort()).toEqual([...found(text)].sort())
  })
})

// Every kind in every fourth rig, and every rig with every fourth kind.
const cases = Object.entries(berths).flatMap(([kind, plant], index) =>
  books
    .filter((_, place) => (place + index) % 4 === 0)
    .flatMap(book =>
      someOf(plant(book), 1, seeded(seed + index)).map(({ text }) => ({ kind, book: book.name, text })),
    ),
)

describe.each(cases)('$kind in $book', ({ text }) => {
  it('is found as in a mirror when port and starboard change places', { timeout }, () => {
    const asWritten = found(text)
    expect(asWritten).not.toEqual([])
    expect(asMirrored(found(mirrored(text))).sort()).toEqual([...asWritten].sort())
  })
})
