import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { reckon } from '../../src/reckon/index.ts'
import type { Rig } from '../../src/rig/index.ts'
import { labelBoxesMeet } from '../../src/sheets/label-box.ts'
import { sailPlan } from '../../src/sheets/sail-plan/index.ts'
import { compiledRig, compiledText } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'
import { allMarks, boxOf, groupsOf, numbersOf, textsOf } from './plan-marks.ts'

async function plan(rig: Rig) {
  const { ruler } = await installedFonts()
  const imprint = { digest: '7Q4K-9MTX', from: 'odd.rig', errors: 0 }
  const { value: sheet, findings } = sailPlan(rig, reckon(rig), { ruler, imprint, paper: 'A4' })
  const marks = allMarks(sheet.marks)
  return {
    sheet,
    findings,
    words: textsOf(sheet.marks).map(({ mark }) => mark.words),
    ids: marks.flatMap(({ mark }) => mark.id ?? []),
    numbers: marks.flatMap(({ mark }) => numbersOf(mark)),
  }
}

const planOf = (text: string) => plan(compiledText(text).value.rig)

const cutter = `edition 1
vessel Wren
  gaff cutter
  waterline 11.20 m, over spars 19.00 m
  beam 3.60 m, draught 2.10 m
  lateral centre 6.10 m aft 0.90 m below
  measure in ft and in
masts
  main mast, stepped 4.60 m aft 0.90 m up, raked 1 deg aft
    lower mast to 11.20 m up, 240 mm thick
    topmast to 17.00 m up, 140 mm thick, doubled 1.10 m
spars
  bowsprit, from 0.60 m aft 1.30 m up to 5.20 m forward 2.30 m up, 190 mm thick
  main boom, from 4.80 m aft 2.00 m up to 13.60 m aft 2.50 m up, 190 mm thick
  main gaff, from 4.90 m aft 9.00 m up to 10.40 m aft 13.60 m up, 130 mm thick
stays
  jib stay from 4.75 m aft 11.00 m up to 4.90 m forward 2.20 m up, 14 mm thick
sails
  jib, headsail on jib stay
    tack 4.50 m forward 2.50 m up, head 4.00 m aft 10.20 m up, clew 3.00 m aft 2.60 m up
  mainsail, gaff sail on main gaff and main boom
    tack 4.90 m aft 2.20 m up, clew 13.00 m aft 2.70 m up, throat 5.00 m aft 8.90 m up, peak 10.20 m aft 13.20 m up
`

describe('a cutter of one mast, her hull not recorded', () => {
  test('is drawn with a hull and shrouds by rule, and says so', async () => {
    const { words, ids } = await planOf(cutter)
    expect(words).toContain('Hull drawn by rule: her lines are not recorded')
    expect(words).toContain('hull and rigging drawn by rule')
    expect(ids).toEqual(
      expect.arrayContaining(['hull', 'standing-by-rule.main-mast', 'bobstay-by-rule', 'sail.mainsail']),
    )
  })

  test('speaks feet where she does', async () => {
    const { words } = await planOf(cutter)
    expect(words).toContain('36 ft 9 in')
    expect(words).toContain('feet')
    expect(words).toContain('ft²')
  })

  test('keeps her jib’s stay and takes the rule away where shrouds are recorded', async () => {
    const { ids } = await planOf(
      cutter.replace(
        'stays\n',
        'stays\n  main shrouds, 3 a side from 4.70 m aft 0.10 m out 9.60 m up to 5.00 m aft 1.70 m out 1.40 m up, 0.50 m apart\n',
      ),
    )
    expect(ids).toContain('shrouds.main-shrouds')
    expect(ids).not.toContain('standing-by-rule.main-mast')
  })

  test('says what of her is not drawn', async () => {
    const { words, ids } = await planOf(cutter.replace(', clew 3.00 m aft 2.60 m up', ''))
    expect(words).toContain('Not drawn, for want of sound measures: jib')
    expect(words).toContain('not known')
    expect(ids).not.toContain('sail.jib')
    expect(ids).not.toContain('centre-of-effort')
  })
})

describe('rigs with less', () => {
  test('names alone give a sheet that lists the sails and says that nothing can be drawn', async () => {
    const { words, ids } = await planOf(`edition 1
vessel Nothing But Names
  brig
masts
  fore mast
spars
  fore yard
sails
  fore course, square course on fore yard
`)
    expect(words).toContain('Nothing is recorded that could be drawn to scale')
    expect(words).toContain('Not to scale')
    expect(words).toContain('Fore course')
    expect(words.filter(word => word === 'not recorded').length).toBe(6)
    expect(ids).not.toContain('ship')
  })

  test('an empty text gives a sheet', async () => {
    const { words } = await planOf('')
    expect(words).toContain('Nothing is recorded that could be drawn to scale')
  })

  test('one mast without a hull stands over the waterline, which stays above the band', async () => {
    const { words, sheet } = await planOf(`edition 1
vessel Stick
masts
  main mast, stepped 4.60 m aft 0.90 m up
    pole to 11.20 m up, 240 mm thick
`)
    expect(words).toContain('No hull: her length is not recorded')
    const water = groupsOf(sheet.marks).find(({ id }) => id === 'waterline')
    const lowest = Math.max(...(water?.marks ?? []).flatMap(numbersOf).filter((_, i) => i % 2 === 1))
    expect(lowest).toBeLessThan(297 - 11 - 1.6 - 26)
  })
})

describe('rigs with absurd numbers and too much of everything', () => {
  const { rig } = compiledRig('schooner-pellow-finch').value

  test('a mast of a million metres is left off, and said', async () => {
    const [mast] = rig.masts
    const tall = mast?.sections.map(section => ({
      ...section,
      head: section.head && { ...section.head, z: 1e6 },
    }))
    const masts = rig.masts.map(one => (one === mast ? { ...one, sections: tall } : one)) as Rig['masts']
    const { findings, numbers } = await plan({ ...rig, masts })
    expect(findings.map(({ rule }) => rule)).toEqual(['sheet/beyond-paper'])
    expect(findings[0]?.message).toContain('Fore mast')
    expect(numbers.every(Number.isFinite)).toBe(true)
  })

  test('a thousand sails are drawn as far as a plan can hold, and said', async () => {
    const sails = Array.from({ length: 1000 }, (_, i) => {
      const like = rig.sails[i % rig.sails.length]
      return { ...like, name: `${like?.name} ${i}`, label: `${like?.label} ${i}` } as Rig['sails'][number]
    })
    const { findings, words } = await plan({ ...rig, sails })
    expect(findings.some(({ rule }) => rule === 'sheet/too-many')).toBe(true)
    expect(words).toContain('and 880 more')
  }, 60_000)

  test('a name that finds no place stands in the sky on a leader, and says so', async () => {
    const sails = rig.sails.map(sail =>
      sail.name === 'jib' ? { ...sail, label: 'Flibbertigibbetandstaysailoftheveryfairestweather' } : sail,
    )
    const { findings, sheet } = await plan({ ...rig, sails })
    expect(findings.map(({ rule }) => rule)).toEqual(['sheet/label-no-place'])
    const boxes = groupsOf(sheet.marks)
      .filter(({ id }) => id?.startsWith('name.'))
      .map(({ marks }) => textsOf(marks).map(({ mark }) => boxOf(mark)))
    const meeting = boxes.flatMap((a, i) =>
      boxes.slice(i + 1).filter(b => a.some(p => b.some(q => labelBoxesMeet(p, q)))),
    )
    expect(boxes.length).toBe(rig.sails.length)
    expect(meeting).toEqual([])
  })

  test('any number may be any number: there is always a sheet, with every mark at a finite place', async () => {
    const { ruler } = await installedFonts()
    const imprint = { digest: '7Q4K-9MTX', from: 'odd.rig', errors: 1 }
    const hostile = fc.constantFrom(0, -0, -1, 1e-9, 1e9, 399, -399, 1e300, NaN, Infinity, -Infinity)
    fc.assert(
      fc.property(
        fc.array(hostile, { minLength: 3, maxLength: 12 }),
        fc.integer({ min: 0, max: 40 }),
        (values, skip) => {
          const odd = spoilt(rig, values, skip)
          const { value: sheet } = sailPlan(odd, reckon(odd), { ruler, imprint, paper: 'A4' })
          expect(
            allMarks(sheet.marks)
              .flatMap(({ mark }) => numbersOf(mark))
              .every(Number.isFinite),
          ).toBe(true)
        },
      ),
      { numRuns: 25, seed: 20261125 },
    )
  }, 120_000)
})

/** The rig with numbers of its geometry replaced: the first after `skip`, then every thirteenth. */
function spoilt(rig: Rig, values: readonly number[], skip: number): Rig {
  let seen = 0
  let used = 0
  const spoil = (value: unknown, key: string): unknown => {
    if (key === 'span' || key === 'toSet' || key === 'toDouse') return value
    if (typeof value === 'number') return (seen++ + skip) % 13 === 0 ? values[used++ % values.length] : value
    if (Array.isArray(value)) return value.map(item => spoil(item, key))
    if (typeof value !== 'object' || value === null) return value
    return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, spoil(part, name)]))
  }
  const { vessel, hull, masts, spars, standing, sails, deck } = rig
  const parts = spoil({ vessel, hull, masts, spars, standing, sails, deck }, '') as Pick<
    Rig,
    'masts' | 'spars'
  >
  const odd = { ...rig, ...parts }
  return {
    ...odd,
    mastAt: new Map(odd.masts.map(mast => [mast.name, mast])),
    sparAt: new Map(odd.spars.map(spar => [spar.name, spar])),
  }
}
