import fc from 'fast-check'
import { textLines } from '../../src/syntax/index.ts'
import type { Source } from '../../src/text/index.ts'

const blanks = fc.stringMatching(/^[ \t]{1,6}$/)
const lineEnds = fc.constantFrom('\n', '\r\n', '\r')

/**
 * A sound text with all its spacing drawn anew, as far as the language allows: blanks between words and before remarks,
 * at the ends of lines and on blank lines, before a comma and behind it, tabs, the depth of each level (two columns or
 * more), the margins of remarks, and the line ends.
 */
export function scrambled(source: Source): fc.Arbitrary<string> {
  const rows = rowsOf(source)
  return fc
    .record({
      steps: fc.array(fc.integer({ min: 2, max: 5 }), { minLength: 8, maxLength: 8 }),
      gaps: fc.infiniteStream(blanks),
      maybe: fc.infiniteStream(fc.option(blanks, { nil: '', freq: 3 })),
      ends: fc.infiniteStream(lineEnds),
      margins: fc.infiniteStream(fc.integer({ min: 0, max: 9 })),
    })
    .map(({ steps, gaps, maybe, ends, margins }) => {
      const lines = rows.map(({ level, words, remark }) => {
        if (level === undefined) return remark === '' ? take(maybe) : ' '.repeat(take(margins)) + remark
        const margin = steps.slice(0, level).reduce((sum, step) => sum + step, 0)
        const said = words.map((word, i) => (i === 0 ? '' : take(word === ',' ? maybe : gaps)) + word)
        return ' '.repeat(margin) + said.join('') + (remark === '' ? '' : take(gaps)) + remark + take(maybe)
      })
      return lines.reduce((text, line) => text + endBetween(text, line, take(ends)) + line)
    })
}

/** A line feed straight behind a carriage return would make one line end of two. */
const endBetween = (text: string, line: string, end: string): string =>
  line === '' || text.endsWith('\r') ? '\r\n' : end

const take = <T>(stream: Iterator<T>): T => stream.next().value as T

/** Each line of a text: its level and words, or undefined and none, and the remark on it. */
function rowsOf({ name, text }: Source) {
  const said = textLines({ name, text })
  let next = 0
  let start = 0
  return text.split('\n').map(row => {
    const [from, end] = [start, start + row.length]
    start = end + 1
    const line = said[next]
    const first = line?.pieces[0]
    if (!line || !first || first.start >= end) return { level: undefined, words: [], remark: row.trim() }
    next++
    const read = line.pieces.at(-1)?.end ?? from
    return {
      level: line.level,
      words: line.pieces.map(piece => text.slice(piece.start, piece.end)),
      remark: text.slice(read, end).trim(),
    }
  })
}

/** A sound text with remarks and blank lines put in wherever the language lets them stand: behind what is said, and between lines. */
export function remarked(source: Source): fc.Arbitrary<string> {
  const rows = rowsOf(source)
  const remark = fc.constantFrom(
    '#',
    '# a remark',
    '#\ttabs\tin it  ',
    '## # "quoted" 12 m, and',
    '# until the end of it',
  )
  return fc
    .record({
      behind: fc.infiniteStream(fc.option(remark, { nil: '', freq: 3 })),
      between: fc.infiniteStream(
        fc.option(fc.array(fc.oneof(remark, fc.constantFrom('', ' ', '\t')), { maxLength: 3 }), {
          nil: [],
          freq: 3,
        }),
      ),
    })
    .map(({ behind, between }) =>
      source.text
        .split('\n')
        .flatMap((line, at) => {
          const row = rows[at]
          const more = row?.level !== undefined && row.remark === '' ? take(behind) : ''
          return [more === '' ? line : `${line} ${more}`, ...take(between)]
        })
        .join('\n'),
    )
}
