import { describe, expect, it } from 'vitest'
import { compile } from '../../src/compile.ts'
import { mended } from '../../src/findings/index.ts'
import type { Source } from '../../src/text/index.ts'
import { compiledText, exampleText } from '../support/compiled.ts'
import { type Example, entryName, filesOf, pages } from './page.ts'

const remarks = (text: string) => text.match(/#.*$/gm) ?? []

function found(example: Example) {
  const { findings, value } = compile(filesOf(example), { name: entryName, text: example.entry })
  return { findings, sources: value.rig.sources.filter(({ name }) => !name.startsWith('standard gear/')) }
}

function withTexts(example: Example, changed: readonly Source[]): Example {
  const now = new Map(changed.map(({ name, text }) => [name, text]))
  const beside = [...example.beside].map(([name, text]) => [name, now.get(name) ?? text] as const)
  return { entry: now.get(entryName) ?? example.entry, beside: new Map(beside) }
}

const fixable = pages.flatMap(({ name, fails }) => {
  if (!fails || !found(fails).findings.some(finding => finding.fix)) return []
  return [{ name, fails }]
})

it('some pages show what can be mended surely', () =>
  expect(fixable.map(({ name }) => name)).toEqual(
    expect.arrayContaining(['line/counterpart-one-way', 'name/unknown', 'syntax/margin']),
  ))

describe.each(fixable)('the fixes of $name', ({ fails }) => {
  it('mend what they are offered for, bring nothing new, and keep every remark', () => {
    const before = found(fails)
    const change = mended(before.sources, before.findings)
    expect(change.applied.length).toBeGreaterThan(0)
    const after = withTexts(fails, change.sources)
    const left = before.findings.filter(({ fix }) => !fix).map(({ rule, message }) => `${rule}: ${message}`)
    const told = found(after).findings.map(({ rule, message }) => `${rule}: ${message}`)
    expect(told.filter(one => !left.includes(one))).toEqual([])
    expect(remarks(after.entry)).toEqual(remarks(fails.entry))
  })
})

describe('a name is mended only where it is sure', () => {
  const fixesOf = (words: string) =>
    compiledText(`stays
  jib stay
  fore stay 2
  fore stay 4

sails
  jib, headsail on ${words}
`).findings.flatMap(({ fix }) => fix?.title ?? [])

  it('one letter from the only name near', () => expect(fixesOf('jib sta')).toEqual(['Read "jib stay"']))
  it('not where a figure would change', () => expect(fixesOf('fore stay 3')).toEqual([]))
  it('not two letters away', () => expect(fixesOf('jbi sta')).toEqual([]))
})

describe('a clause put in', () => {
  const gear = (sheet: string) => `spars
  main yard, hoists from 3.00 m to 9.00 m up
masts
  main mast
sails
  squaresail, square sail on main yard
    gear own
gear own
${sheet}
  clewline pair, raises clew against sheet and halyard
  halyard single, hoists yard against clewline
`
  const fixed = (sheet: string) => {
    const text = gear(sheet)
    const source = { name: 'test.rig', text }
    const { findings } = compiledText(text)
    return mended([source], findings).sources[0]?.text
  }

  it('stands behind a comma where all is said in one line', () =>
    expect(fixed('  sheet pair, draws clew aft against halyard  # remark')).toBe(
      gear('  sheet pair, draws clew aft against halyard, also against clewline  # remark'),
    ))

  it('has a line of its own where the statement has a block', () =>
    expect(fixed('  sheet pair\n    draws clew aft   # remark\n    against halyard\n\n  # more')).toBe(
      gear(
        '  sheet pair\n    draws clew aft   # remark\n    against halyard\n    also against clewline\n\n  # more',
      ),
    ))

  it('keeps the line ends of the text', () => {
    const block = (more: string) =>
      gear(`  sheet pair\n    draws clew aft\n    against halyard${more}`).replaceAll('\n', '\r\n')
    const source = { name: 'test.rig', text: block('') }
    const { findings } = compiledText(source.text)
    expect(mended([source], findings).sources[0]?.text).toBe(block('\n    also against clewline'))
  })
})

const withNot = `masts
  main mast
spars
  main yard, hoists from 3.00 m to 9.00 m up
sails
  squaresail, square sail on main yard
    gear own
      sheet not against clewline
gear own
  sheet pair, draws clew aft against clewline and halyard
  clewline pair, raises clew against sheet and halyard
  halyard single, hoists yard against clewline
`

it('a clause put in undoes one that was taken away', () => {
  const text = withNot
  const { findings } = compiledText(text)
  expect(findings.map(({ rule }) => rule)).toEqual(['line/counterpart-one-way'])
  const [after] = mended([{ name: 'test.rig', text }], findings).sources
  expect(compiledText(after?.text ?? '').findings).toEqual([])
})

describe('fixes of one text', () => {
  const source = { name: 'a.rig', text: 'abcdef' }
  const fix = (start: number, end: number, text: string) => ({
    rule: 'a/b' as const,
    severity: 'note' as const,
    at: { source: 'a.rig', start, end },
    message: '',
    related: [],
    fix: { title: '', edits: [{ at: { source: 'a.rig', start, end }, text }] },
  })

  it('that share a letter or a place are not made together', () => {
    const change = mended([source], [fix(1, 3, 'X'), fix(2, 4, 'Y'), fix(4, 4, 'Z'), fix(4, 4, 'W')])
    expect(change.sources).toEqual([{ name: 'a.rig', text: 'aXdZef' }])
    expect([change.applied.length, change.left.length]).toEqual([2, 2])
  })

  it('that are the same are made once', () =>
    expect(mended([source], [fix(1, 3, 'X'), fix(1, 3, 'X')]).sources[0]?.text).toBe('aXdef'))

  it('in another text are passed over', () =>
    expect(mended([{ name: 'b.rig', text: '' }], [fix(0, 1, '')])).toEqual({
      sources: [],
      applied: [],
      left: [],
    }))
})

describe('a slip in a whole rig is mended surely, and its remarks are kept', () => {
  const schooner = exampleText('schooner-pellow-finch')
  const slips: readonly (readonly [string, string | RegExp, string])[] = [
    ["a kind run into its sail's name", '  foresail, gaff sail on', '  foresail gaff sail on'],
    ['two spars with nothing between', 'foresail gaff and foresail boom', 'foresail gaff foresail boom'],
    ['sails set without "then"', 'set mainsail then foresail then', 'set mainsail foresail then'],
    [
      'sails set with commas',
      /^set .*$/m,
      'set mainsail, foresail, fore staysail, jib, outer jib, main gaff topsail',
    ],
    ['two rails with nothing between', 'bowsprit rack and head-sheet', 'bowsprit rack head-sheet'],
    ['a page of pins without "on"', 'belay on fore rail', 'belay fore rail'],
    ['a page word misspelt', /^rails$/m, 'raisl'],
    ['a number in words', /\b4 pins/, 'four pins'],
    ['a line misspelt', '  2  outer jib sheet', '  2  outer jib shet'],
  ]

  it.each(slips)('%s', (_, from, to) => {
    const text = schooner.replace(from, to)
    expect(text).not.toBe(schooner)
    const { findings } = compiledText(text)
    expect(
      findings.filter(({ severity, fix }) => severity !== 'note' && !fix).map(({ message }) => message),
    ).toEqual([])
    const after = mended([{ name: 'test.rig', text }], findings).sources[0]?.text ?? ''
    expect(compiledText(after).findings.filter(({ severity }) => severity !== 'note')).toEqual([])
    expect(remarks(after)).toEqual(remarks(text))
  })
})
