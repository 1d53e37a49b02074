import { describe, expect, test } from 'vitest'
import { cautionsAboard, evolve } from '../../src/evolve/index.ts'
import { reckon } from '../../src/reckon/index.ts'
import { placedTiers } from '../../src/sheets/book/chart-layout.ts'
import { stationHandbook } from '../../src/sheets/book/index.ts'
import { chartOpenings, pinsOf } from '../../src/sheets/book/rail-tiers.ts'
import { compiledRig, exampleRigs } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'
import { placedTexts } from '../support/placed-text.ts'

const { ruler, covers } = await installedFonts()
const setting = {
  ruler,
  covers,
  paper: 'A4',
  imprint: { digest: '7Q4K-9MTX', from: 'test.rig', errors: 0 },
} as const

describe('the page of cautions', () => {
  test.each([
    ['barque-harrow-tansy', [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14]],
    ['cutter-morrow-pipit', [1, 2, 3, 4, 7, 8, 9, 10, 11, 12]],
    ['lugger-saffron-dunlin', [1, 2, 3, 4, 5, 7, 8, 9, 10, 11]],
  ])('of the %s holds those that bite aboard, under the numbers they have everywhere', (name, numbers) => {
    const { rig } = compiledRig(name).value
    expect(cautionsAboard(rig, evolve(rig)).map(({ number }) => number)).toEqual(numbers)
  })

  test.each(exampleRigs)('of the %s holds all that her orders name', name => {
    const { rig, evolutions } = compiledRig(name).value
    const aboard = new Set(cautionsAboard(rig, evolutions).map(({ number }) => number))
    const named = evolutions.sails.flatMap(({ set, douse }) =>
      [set, douse].flatMap(order => order?.phases.flatMap(({ cautions }) => cautions) ?? []),
    )
    expect(named.length).toBeGreaterThan(0)
    expect(named.filter(number => !aboard.has(number))).toEqual([])
  })

  test('says how many there are, and that a gaff is no yard', () => {
    const { rig, evolutions } = compiledRig('cutter-morrow-pipit').value
    const [station] = rig.stations
    if (!station) throw new Error('a cutter without a station')
    const { value } = stationHandbook({ rig, figures: reckon(rig), evolutions }, station, setting)
    const page = value.pages.find(({ title }) => title === 'Ten cautions')
    const words = page ? placedTexts(page).map(text => text.words) : []
    expect(words).toContain('Halyards and gaffs')
    expect(words.filter(said => /the yard\b/.test(said))).toEqual([])
  })
})

describe.each(exampleRigs)('the rail charts of the %s', name => {
  const { rig } = compiledRig(name).value

  test('leave no page half empty that two rails could fill', () => {
    for (const station of rig.stations) {
      const openings = chartOpenings({ rig, station }).value
      for (const tiers of openings)
        expect(
          tiers.length === 2 || tiers.every(tier => tier.slots.length === 1 || pinsOf(tier) < 6),
          station.name,
        ).toBe(true)
      const held = openings.flatMap(tiers => tiers.flatMap(({ slots }) => slots))
      const codes = held.flatMap(({ port, starboard }) => [port?.rail.code, starboard?.rail.code])
      expect([...new Set(codes.filter(code => code !== undefined))].sort()).toEqual([...station.rails].sort())
    }
  })

  test('keep every rail within the page', () => {
    for (const station of rig.stations)
      for (const tiers of chartOpenings({ rig, station }).value)
        for (const side of ['port', 'starboard'] as const)
          for (const { rails } of placedTiers(tiers, side))
            for (const { spot } of rails) expect(spot.x).toBeGreaterThanOrEqual(-0.01)
  })
})
