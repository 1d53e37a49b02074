import { describe, expect, it } from 'vitest'
import { mended } from '../../src/findings/index.ts'
import { compiledText, exampleRigs, exampleText } from '../support/compiled.ts'
import { check } from './check.ts'

const jib = `bring in standard gear

vessel Mole
  cutter

stays
  jib stay

sails
  jib, headsail on jib stay
`
const rail = `
rails
  fore rail, port and starboard, 4 pins, marked FR

belay on fore rail
`

describe('one cause is told once', () => {
  it('the belaying that is still to be written is one want, not one of every line', () => {
    const text = exampleText('barque-harrow-tansy')
    const half = text.slice(0, text.indexOf('belay on fore rail'))
    const wants = compiledText(half).findings.filter(one => one.rule === 'belay/no-place')
    expect(wants.map(one => one.message)).toEqual([
      expect.stringMatching(/is belayed nowhere\. Nor are \d{2} other lines: .*(?: and .*\.| \.\.\.)$/),
    ])
  })

  it('a single line on both sides is not an orphan as well', () =>
    check(`${jib}    gear jib
${rail}  1  jib sheet
  2  port jib halyard
  3  jib downhaul
#    ^ error belay/side-missing
`))

  it('both lines of a pair without a place are told together', () =>
    check(`${jib}# ^ error belay/no-place: Jib sheet, port and starboard, is belayed nowhere.
    gear jib
${rail}  2  port jib halyard, starboard jib downhaul
`))

  it('one line of a pair without a place is an orphan, and not a pair on one side', () =>
    check(`${jib}# ^ error belay/no-place: Jib sheet, starboard, is belayed nowhere; its fellow is at the fore rail, port, pin 1.
    gear jib
${rail}  1  port jib sheet
  2  port jib halyard, starboard jib downhaul
`))

  it('a pair on one side is not said to be on the wrong side or unlike', () =>
    check(`${jib}    gear jib
${rail}  1  port jib.sheet.starboard
#         ^ error pair/one-side
  3  port jib.sheet.port
  2  port jib halyard, starboard jib downhaul
`))

  it('a halyard that hoists nothing leaves its sail unset, but that is not told besides', () =>
    check(`${jib}    gear jib
      halyard hoists haed against downhaul
#     ^ error line/acts-on-nothing
${rail}  1  jib sheet
  2  port jib halyard, starboard jib downhaul
`))

  it('a sail without gear wants everything, and is told once', () =>
    check(`vessel Mole
  ketch

masts
  main mast

spars
  main yard, hoists from 3.00 m to 9.00 m up

stays
  jib stay

sails
  squaresail, square sail on main yard
# ^ error sail/nothing-sets-it: Squaresail has no gear: nothing sets it, and nothing gets it in.
  jib, headsail on jib stay
    gear small jib

gear small jib
  halyard single
    hoists head against downhaul
  downhaul single
    lowers head against halyard
  sheet pair
    draws clew aft against other sheet
${rail}  1  jib sheet
  2  port jib halyard, starboard jib downhaul
`))

  it('a rig of sails without any line is told once', () =>
    check(`vessel Mole
# ^ error sail/nothing-sets-it: The rig has 2 sails and no line: nothing sets them, and nothing gets them in.
  ketch

masts
  main mast

spars
  main yard, hoists from 3.00 m to 9.00 m up

stays
  jib stay

sails
  squaresail, square sail on main yard
  jib, headsail on jib stay
`))

  it('a rig without rails is told once, however many lines it has', () =>
    check(`bring in standard gear

vessel Mole
# ^ error belay/no-place: The rig has no rails, and its 4 lines are belayed nowhere.
  cutter

stays
  jib stay

sails
  jib, headsail on jib stay
    gear jib
`))

  it('a fault of a gear hung on three sails is told once, for all of them', () =>
    check(`stays
  jib stay
  inner stay
  fore stay

gear small jib
  halyard single
# ^ error line/nothing-answers: Jib halyard is answered by nothing: no line is said to be eased when it is hauled. So are the inner jib halyard and the fore staysail halyard.
    hoists head
  downhaul single
    lowers head against halyard

sails
  jib, headsail on jib stay
    gear small jib
  inner jib, headsail on inner stay
    gear small jib
  fore staysail, staysail on fore stay
    gear small jib
`))

  it('a part is not asked for what the whole vessel would have', () =>
    check(`bring in standard gear

stays
  jib stay

sails
  jib, headsail on jib stay
    gear jib
      without downhaul
      halyard answered by the weight of the sail
`))
})

describe('a text that breaks off', () => {
  const shares = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9]

  it.each(exampleRigs)('is told of in a few findings: %s', { timeout: 60_000 }, rig => {
    const lines = exampleText(rig).split('\n')
    for (const share of shares) {
      const cut = lines.slice(0, Math.floor(lines.length * share)).join('\n')
      const found = compiledText(cut, `${rig}.rig`).findings.filter(({ severity }) => severity !== 'note')
      expect(found.map(({ message }) => message).slice(6), `${share} of ${rig}`).toEqual([])
    }
  })

  it('and the horses that it names are one want', () => {
    const text = exampleText('ketch-bracken-loom')
    const half = text.slice(0, text.indexOf('\ndeck\n'))
    const names = compiledText(half).findings.filter(({ rule }) => rule === 'name/unknown')
    expect(names.map(({ message }) => message)).toEqual([
      'The text has no page of the deck, and lines run on horses there.',
    ])
  })
})

it('a name that stands for nothing is missed once, and mended wherever it is spoken', () => {
  const sails = `stays
  jib stay

sails
  jib, headsail on jib sta
  spitfire jib, headsail on jib sta
`
  const { findings } = compiledText(sails)
  expect(findings.map(({ message }) => message)).toEqual(['There is no stay, spar or mast "jib sta".'])
  expect(mended([{ name: 'test.rig', text: sails }], findings).sources[0]?.text).toBe(
    sails.replaceAll('jib sta\n', 'jib stay\n'),
  )
})

describe('a page that is not read', () => {
  const schooner = exampleText('schooner-pellow-finch')

  it.each(['sails', 'spars', 'rails', 'stays', 'lines', 'deck', 'masts'])(
    '"%s" under no page word is one fault',
    word => {
      const { findings } = compiledText(schooner.replace(`\n${word}\n`, '\nfurniture\n'))
      const told = findings.filter(({ severity }) => severity !== 'note')
      expect(told.map(({ message }) => message)).toEqual([
        '"furniture" stands at the margin, where only page words stand.',
      ])
    },
  )

  it('does not hide a slip of the pen elsewhere', () => {
    const text = schooner
      .replace('\nspars\n', '\nfurniture\n')
      .replace('  2  outer jib sheet', '  2  outer jib shet')
    const told = compiledText(text).findings.filter(({ severity }) => severity !== 'note')
    expect(told.map(({ rule }) => rule)).toEqual(['syntax/page-word', 'name/unknown'])
  })

  it.each(['up 3.00 m aft', 'up and over', 'then jib'])(
    'nor does "%s" at the margin lose the page',
    words => {
      const { findings } = compiledText(schooner.replace('\nspars\n', `\nspars\n${words}\n`))
      expect(findings.filter(({ severity }) => severity !== 'note')).toHaveLength(1)
    },
  )

  it('nor does one of its entries that slipped out to the margin', () => {
    const text = schooner.replace('\n  fore topsail yard,', '\nfore topsail yard,')
    const told = compiledText(text).findings.filter(({ severity }) => severity !== 'note')
    expect(told.map(({ rule }) => rule)).toEqual(['syntax/page-word'])
  })
})

describe('a page of pins that does not say "on"', () => {
  const schooner = exampleText('schooner-pellow-finch')

  it.each(['no', 'onn', 'in', 'at', 'to', ''])('"%s" is told once, and mended', word => {
    const text = schooner.replace('belay on fore rail', `belay ${word} fore rail`.replace('  ', ' '))
    const { findings } = compiledText(text)
    const told = findings.filter(({ severity }) => severity !== 'note')
    expect(told.map(({ rule }) => rule)).toEqual(['belay/neither-on-nor-to'])
    expect(mended([{ name: 'test.rig', text }], told).sources[0]?.text).toBe(schooner)
  })
})

it('a rail from a place to the same place has its pins too close', () =>
  check(`rails
  fore rail, port and starboard, marked FR
# ^ error belay/pins-too-close: Fore rail, port and starboard, has its pins 0.0 cm apart; coils need 16.0 cm.
    4 pins from 6.90 m aft 2.85 m out to 6.90 m aft 2.85 m out, 2.40 m up
  fore bitts, marked FB
    2 pins at 6.90 m aft 0.40 m up
`))
