import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { compile } from '../../src/compile.ts'
import type { Order } from '../../src/evolve/index.ts'
import { parse } from '../../src/syntax/index.ts'
import { compiledRig, exampleFiles } from '../support/compiled.ts'
import { vessels } from './tables.ts'

const foreAndAfters = [
  'cutter-morrow-pipit',
  'ketch-bracken-loom',
  'lugger-saffron-dunlin',
  'junk-willow-heron',
] as const

// What a handbook page can hold, and what can be called across a deck.
const mostWordsInAnOrder = 6
const mostWordsInAnAnswer = 3
const mostCautionsInABox = 3
const mostPhasesOnACard = 6

describe.each([...vessels, ...foreAndAfters])('the orders of %s', vessel => {
  const { rig, evolutions } = compiledRig(vessel).value
  const orders = evolutions.sails.flatMap(({ sail, set, douse }) => [
    { name: `set ${sail}`, order: set },
    { name: `douse ${sail}`, order: douse },
  ])
  const phases = orders.flatMap(({ name, order }) => (order?.phases ?? []).map(phase => ({ name, phase })))

  it('say of every sail how it is set and how it is got in', () => {
    expect(orders.filter(({ order }) => !order).map(({ name }) => name)).toEqual([])
  })

  it('begin from a state, and a douse ends with what to do if it jams', () => {
    const lacking = ({ order }: { order: Order | undefined }) =>
      !order?.before || (order.kind === 'douse') !== (order.jams !== undefined)
    expect(orders.filter(lacking).map(({ name }) => name)).toEqual([])
  })

  it('have an answer, a sign that it is done and a report in every phase', () => {
    const lacking = phases.filter(({ phase }) => !phase.answer || !phase.until || !phase.report)
    expect(lacking.map(({ name, phase }) => `${name}: ${phase.order}`)).toEqual([])
  })

  it('are short enough to be called', () => {
    for (const { name, phase } of phases) {
      expect(words(phase.order), `${name}: ${phase.order}`).toBeLessThanOrEqual(mostWordsInAnOrder)
      expect(words(phase.answer), `${name}: ${phase.answer}`).toBeLessThanOrEqual(mostWordsInAnAnswer)
      expect(phase.order, name).toMatch(/\.$/)
    }
  })

  it('fit a card and a caution box', () => {
    for (const { name, order } of orders) {
      expect(order?.phases.length, name).toBeLessThanOrEqual(mostPhasesOnACard)
    }
    for (const { name, phase } of phases) {
      expect(phase.cautions.length, `${name}: ${phase.order}`).toBeLessThanOrEqual(mostCautionsInABox)
    }
  })

  it('say themselves how every haul is answered', () => {
    const silent = phases.flatMap(({ name, phase }) =>
      phase.answers
        .filter(({ how }) => how.kind === 'follows')
        .map(
          ({ hauled, counterpart }) =>
            `${name}, ${phase.order} ${hauled.as} ${hauled.pairKey}: ${counterpart.as} ${counterpart.pairKey}`,
        ),
    )
    expect(silent).toEqual([])
  })

  it('send nobody aloft while the yard or the sail is hauled at', () => {
    const aloft = phases.filter(({ phase }) => phase.aloft && phase.haul.length > 0)
    expect(aloft.map(({ name, phase }) => `${name}: ${phase.order}`)).toEqual([])
  })

  it('work every line of the sail, and the hands suffice', () => {
    const worked = new Set(
      phases.flatMap(({ phase }) =>
        [phase.haul, phase.ease, phase.hold, phase.tend, phase.standBy].flat().map(row => row.pairKey),
      ),
    )
    const sails = new Set(rig.sails.map(({ name }) => name))
    const idle = rig.lines.filter(({ host, pairKey }) => host && sails.has(host.name) && !worked.has(pairKey))
    expect([...new Set(idle.map(({ pairKey }) => pairKey))]).toEqual(neverWorked[vessel])
    const short = phases.filter(({ phase }) => phase.hands.stations.some(station => station.short > 0))
    expect(short.map(({ name, phase }) => `${name}: ${phase.order}`)).toEqual([])
  })
})

describe('the standard gear', () => {
  const folder = new URL('../../rigs/gear/', import.meta.url)
  const pages = [
    'standard-gear.rig',
    'square-sails.rig',
    'fore-and-aft-sails.rig',
    'lug-and-lateen-sails.rig',
  ].map(name => ({
    name,
    text: readFileSync(new URL(name, folder), 'utf8'),
  }))

  it('stands by itself, without a finding', () => {
    const files: typeof exampleFiles = {
      read: place => exampleFiles.read({ ...place, shelf: 'standard gear' }),
    }
    expect(pages.flatMap(page => compile(files, page).findings)).toEqual([])
  })

  it('sets and douses with every gear but those of spars without a sail', () => {
    const gears = pages.flatMap(page => parse(page).value.pages).filter(({ kind }) => kind === 'gear')
    const inherits = new Set(gears.filter(({ clauses }) => clauses.some(({ kind }) => kind === 'like')))
    const says = (gear: (typeof gears)[number], what: string) =>
      inherits.has(gear) || gear.block.some(({ kind, name }) => kind === 'sequence' && name?.words === what)
    const silent = gears.filter(gear => !says(gear, 'set') || !says(gear, 'douse'))
    expect(silent.map(({ name }) => name?.words)).toEqual(['yard', 'running bowsprit'])
  })
})

// Set up once and left: an outhaul at the boom's end, a tack that sets the height of a staysail.
const neverWorked = {
  'barque-harrow-tansy': [],
  'schooner-pellow-finch': ['main.topmast-staysail.tack', 'mainsail.clew-outhaul'],
  'cutter-morrow-pipit': ['mainsail.clew-outhaul'],
  'ketch-bracken-loom': ['mizzen.clew-outhaul'],
  'lugger-saffron-dunlin': [],
  'junk-willow-heron': [],
} as const

const words = (said: string | undefined): number => said?.split(/\s+/).length ?? 0
