import { describe, expect, test, vi } from 'vitest'
import { parse } from '../../src/syntax/index.ts'
import { drawn, withoutNotes } from '../support/drawn.ts'

// The first reading analyses the grammar, which takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

/** Parses a text in which the expected findings are drawn, and compares. */
function check(expected: string): void {
  const text = withoutNotes(expected)
  expect(drawn(text, parse({ name: 'test.rig', text }).findings)).toBe(expected)
}

describe('measures', () => {
  test('a bare number wants a unit, and the units that would do are named', () =>
    check(`sails
  jib, headsail on jib stay
    tack 2.53 forward 4.39 m up
#        ^^^^ error measure/unit-missing: "2.53" wants a unit: m, mm, cm, ft or in. As in "2.53 m forward".`))

  test('every such number is told, not the first only', () =>
    check(`spars
  fore yard, 11.60 long, 264 thick, 305 kg, fixed 11.50 up
#            ^^^^^ error measure/unit-missing: "11.60" wants a unit: m, mm, cm, ft or in. As in "11.60 m long".
#                        ^^^ error measure/unit-missing: "264" wants a unit: m, mm, cm, ft or in. As in "264 mm thick".
#                                                 ^^^^^ error measure/unit-missing: "11.50" wants a unit: m, mm, cm, ft or in. As in "11.50 m up".`))

  test('a unit that is none is told with the nearest', () =>
    check(`spars
  fore yard, 11.60 meters long
#                  ^^^^^^ error measure/unit-unknown: "meters" is no unit of this language; nearest: metres, metre.`))

  test('a unit of the wrong kind is told', () =>
    check(`masts
  fore mast, stepped 7.40 m aft 1.60 m up, raked 3 m aft
#                                                ^^^ error measure/unit-wrong: "3 m" is a length, and an angle is due here.`))

  test('inches of rope are round or thick', () =>
    check(`lines
  signal halyard single, 2 in manila
#                        ^^^^ error measure/rope-size: 2 in of rope: say "2 in round" for circumference or "2 in thick" for diameter.`))

  test('numbers beyond all ships, minus signs, exponents and doubtful commas', () =>
    check(`vessel Grey Plover
  waterline 1e999 m
#           ^^^^^^^ error measure/out-of-range: "1e999 m" is no number for a ship.
  beam -6.4 m
#      ^^^^^^ error measure/negative: "-6.4 m" has a minus sign, and a measure here has none.
  draught 2e0 m
#         ^^^^^ error measure/notation: "2e0 m" is not how a number is written here.
  displaces 1,650 kg
#           ^^^^^^^^ error measure/doubtful-comma: "1,650 kg" can be read in two ways: with a decimal comma, or with a comma between thousands.`))

  test('numbers in words are read, and told', () =>
    check(`rails
  fore rail, port and starboard, marked F
    six pins from 2.40 m aft 1.50 m out to 3.90 m aft 1.60 m out, 1.30 m up
#   ^^^ error measure/notation: "six" is not how a number is written here.`))

  test('a height that leads somewhere wants to be told which way', () =>
    check(`masts
  fore mast, stepped 2.80 m aft 0.50 m up
    lower mast to 9.00 m, 190 mm thick
#                 ^^^^^^ error syntax/direction-missing: "9.00 m" wants a word that tells which way: up, aft, forward, below, out, port or starboard.`))

  test('a length behind a direction wants its own', () =>
    check(`sails
  jib, headsail on jib stay
    tack 2.53 m forward 4.39 m
#                       ^^^^^^ error syntax/direction-missing: "4.39 m" wants a direction: aft, forward, up, below, out, port or starboard.`))

  test('hands are counted whole', () =>
    check(`lines
  signal halyard 2.5 hands
#                ^^^ error syntax/count-not-whole: "2.5" counts things, and must be whole.`))
})

describe('words', () => {
  test('a page word that was misspelt is told, and its page read as the one meant', () =>
    check(`sials
#^^^^^ error syntax/page-word: "sials" is no page word, and is read as "sails".
  jib, headsail on jib stay
    tack 2.53 forward
#        ^^^^ error measure/unit-missing: "2.53" wants a unit: m, mm, cm, ft or in. As in "2.53 m forward".
edition 1`))

  test('of two page words as near, the one whose page the text lacks is meant', () =>
    check(`ails
#^^^^ error syntax/page-word: "ails" is no page word, and is read as "sails".
  jib, headsail on jib stay
rails
  fore rail, 3 pins, marked FR`))

  test('or the one that what is set in below speaks of', () =>
    check(`ails
#^^^^ error syntax/page-word: "ails" is no page word, and is read as "sails".
  jib, headsail on jib stay
edition 1`))

  test('where it can be either, its page is passed over', () =>
    check(`ails
#^^^^ error syntax/page-word: "ails" is no page word. Nearest: rails, sails.
  jib
    called 2.53 forward
edition 1`))

  test('what stands at the margin by mistake', () =>
    check(`masts
fore mast, stepped 7.40 m aft 1.60 m up
#^^^^ error syntax/page-word: "fore" stands at the margin, where only page words stand; it is read as a line of the page above.
  lower mast to 15 up
#               ^^ error measure/unit-missing: "15" wants a unit: m, mm, cm, ft or in. As in "15 m up".
main mast, stepped 17.40 m aft 1.60 m up
poles
#^^^^^ error syntax/page-word: "poles" stands at the margin, where only page words stand.
  mizzen mast, stepped 15 aft`))

  test('odd marks are put aside, one finding a line', () =>
    check(`sails
  jib: headsail; on jib stay
#    ^ error syntax/odd-mark: ":" means nothing here.`))

  test('an open quotation points at its opening mark', () =>
    check(`sails
  jib, called "Inner jib
#             ^ error syntax/open-quote: These quotation marks are opened and never closed.`))

  test('a clause that ends too soon', () =>
    check(`masts
  fore mast, stepped
#            ^^^^^^^ error syntax/unfinished: The line ends behind "stepped", and more is due.`))

  test('a word that follows without a breath', () =>
    check(`spars
  fore yard, 11.60 m long steel
#                         ^^^^^ error syntax/comma-missing: "steel" follows "long" without a breath between.`))

  test('a list with commas between is told once, and how to say it', () => {
    const text = `stations
  waist, 3 hands in a watch
    works main rail, staysail cleat and boom cleat
`
    const { value, findings } = parse({ name: 'test.rig', text })
    expect(findings.map(({ message, remedy }) => [message, remedy])).toEqual([
      [
        'A list has "and" between its names, and no comma.',
        'Say "works main rail and staysail cleat and boom cleat".',
      ],
    ])
    expect(value.pages[0]?.block[0]?.doubtful).toBe(true)
  })

  test('two lines with mistakes are two findings', () =>
    check(`masts
  fore mast, stepped aft
#                    ^^^ error syntax/word-misplaced: "aft" can't follow "stepped".
    lower mast to 14.00 m up, doubled thick
#                                     ^^^^^ error syntax/word-misplaced: "thick" can't follow "doubled".`))

  test('a line that begins with a word that only goes on', () =>
    check(`sails
  jib, headsail on jib stay
    aft 2 m
#   ^^^ error syntax/line-begins: A line can't begin with "aft".`))

  test('one side alone is no place', () =>
    check(`rails
  fore rail, port, marked FR
#            ^^^^ error syntax/one-side: "port" alone says no place: a thing on both sides is "port and starboard".`))

  test('prose that is missing', () =>
    check(`gear jib
  to set
    "Hoist away."  haul halyard
      until
#     ^^^^^ error syntax/prose-missing: "until" wants what is waited for behind it, on the same line.`))

  test('a day that the calendar lacks', () =>
    check(`vessel Grey Plover
  revision "C" 31 November 2026
#              ^^^^^^^^^^^^^^^^ error syntax/date: "31 November 2026" is no day of the calendar.`))
})

describe('margins', () => {
  test('one column off is read as the level beside it, with a fix', () => {
    const text = 'belay on fore rail\n  1  jib sheet\n   2  free\n'
    const { findings, value } = parse({ name: 'test.rig', text })
    expect(drawn(text, findings)).toContain(
      'note syntax/margin: This line stands 3 spaces in, its neighbours 2; read as one of them.',
    )
    expect(findings[0]?.fix?.edits).toEqual([{ at: { source: 'test.rig', start: 34, end: 37 }, text: '  ' }])
    expect(value.pages[0]?.block.map(({ pins }) => pins?.from.value)).toEqual([1, 2])
  })

  test('one line a column out does not make its neighbours stand wrongly', () => {
    const text = 'spars\n  fore gaff, 2 m long\n main gaff, 3 m long\n  main boom, 4 m long\n'
    const { findings } = parse({ name: 'test.rig', text })
    expect(findings.map(one => one.fix?.title)).toEqual(['Set the line in by 2 spaces'])
  })

  test('a spar set in below a spar is one more spar, with a fix', () => {
    const text = 'spars\n  fore gaff, 2 m long\n      main gaff, 3 m long\n'
    const { findings, value } = parse({ name: 'test.rig', text })
    expect(value.pages[0]?.block.map(({ name }) => name?.words)).toEqual(['fore gaff', 'main gaff'])
    expect(findings.map(one => one.fix?.title)).toEqual(['Set the line in by 2 spaces'])
  })

  test('a page word one column in still opens its page', () => {
    const { value, findings } = parse({ name: 'test.rig', text: ' sails\n  jib, headsail on jib stay\n' })
    expect(value.pages.map(({ kind }) => kind)).toEqual(['sails'])
    expect(findings.map(({ severity }) => severity)).toEqual(['note'])
  })
})
