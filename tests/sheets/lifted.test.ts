import { expect, test } from 'vitest'
import { evolve } from '../../src/evolve/index.ts'
import { reckon } from '../../src/reckon/index.ts'
import type { Rig, Station } from '../../src/rig/index.ts'
import { stationHandbook } from '../../src/sheets/book/index.ts'
import { compiledText, exampleText } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'
import { placedTexts } from '../support/placed-text.ts'

const { ruler, covers } = await installedFonts()
const setting = { ruler, covers, paper: 'A4', imprint: { digest: '', from: 'test.rig', errors: 0 } } as const
// The barquentine lies up with her fore royal sent down; here her jib halyard is on the bench as well.
const text = exampleText('barquentine-otter-fennel')
const { rig } = compiledText(text.replace(/^ {2}fore royal$/m, '  fore royal\n  jib halyard')).value

const words = (of: Rig, station: string, title: string) =>
  stationHandbook(
    { rig: of, figures: reckon(of), evolutions: evolve(of) },
    of.stationAt.get(station) as Station,
    setting,
  )
    .value.pages.flatMap(page => (page.title.startsWith(title) ? placedTexts(page) : []))
    .map(one => one.words)
    .join(' ')

test('the handbook says which sail can’t be set, and why', () => {
  const glance = words(rig, 'foremast', 'The station at a glance')
  expect(glance).toContain('Fore royal')
  expect(glance).toContain('sent down, because she is laid up from November to March: it can’t be set')
})

test('the order of a sail that lacks its halyard says so first, and calls for it nowhere', () => {
  expect(words(rig, 'forecastle', '')).toMatch(/Sent down: halyard, because [^.]*can’t be\s+set/)
  const set = evolve(rig).ordersAt.get('jib')?.set
  const rows =
    set?.phases.flatMap(one => [...one.haul, ...one.ease, ...one.hold, ...one.tend, ...one.standBy]) ?? []
  expect(rows.length).toBeGreaterThan(5)
  expect(rows.filter(({ pairKey }) => pairKey === 'jib.halyard')).toEqual([])
})

test('no order calls for the sheets of a sail above that is sent down', () => {
  const called = [...evolve(rig).ordersAt.values()].flatMap(({ set, douse }) =>
    [set, douse].flatMap(order => order?.phases.flatMap(one => [...one.ease, ...one.standBy]) ?? []),
  )
  expect(called.filter(({ pairKey }) => pairKey === 'fore.royal.sheet')).toEqual([])
})
