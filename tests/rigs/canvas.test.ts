import { describe, expect, it } from 'vitest'
import { compiledRig, compiledText, exampleRigs } from '../support/compiled.ts'

const sloop = `vessel Mole
  cutter

masts
  main mast

stays
  fore stay
  jib stay

spars
  main gaff
  main boom
  main topsail yard, on main mast
  main royal yard, on main mast

sails
  fore staysail, headsail on fore stay
  jib, headsail on jib stay
  mainsail, gaff sail on main gaff and main boom
    reef 1.10 m above foot
    reef 2.20 m above foot
  gaff topsail, gaff topsail on main mast
  main topsail, square topsail on main topsail yard
    reef 1.20 m below head
  main royal, square royal on main royal yard

canvas
`
const built = (plans: string) => {
  const { value, findings } = compiledText(`${sloop}${plans}`)
  return {
    plans: value.rig.canvas.map(({ name, sails }) => [
      name,
      ...sails.map(({ sail, reefs }) => (reefs > 0 ? `${reefs} in ${sail}` : sail)),
    ]),
    told: findings
      .filter(({ rule }) => /^(?:canvas|name|syntax)\//.test(rule))
      .map(({ rule, severity, message, remedy }) => `${severity} ${rule}: ${message} ${remedy ?? ''}`.trim()),
  }
}

describe('a page of canvas', () => {
  it('names what is carried, in the order of the sails, over as many lines as it takes', () => {
    expect(built('  working sail, mainsail and jib,\n    fore staysail, 1 reef in main topsail\n')).toEqual({
      plans: [['working sail', 'fore staysail', 'jib', 'mainsail', '1 in main topsail']],
      told: [],
    })
  })

  it('takes every sail of a kind, and no gaff topsail for a topsail', () => {
    const { plans, told } = built(
      '  a, every topsail\n  b, every headsail\n  c, every gaff topsail\n  d, every sail\n',
    )
    expect(told).toEqual([])
    expect(plans.slice(0, 3)).toEqual([
      ['a', 'main topsail'],
      ['b', 'fore staysail', 'jib'],
      ['c', 'gaff topsail'],
    ])
    expect(plans[3]).toHaveLength(7)
  })

  it('copies one above it, with more said and some left out; what is said by name goes before its kind', () => {
    const { plans, told } = built(
      '  light airs, every sail\n  fresh, like light airs, 2 reefs in mainsail, without every royal and gaff topsail\n  own, 1 reef in mainsail, every sail\n',
    )
    expect(told).toEqual([])
    expect(plans[1]).toEqual(['fresh', 'fore staysail', 'jib', '2 in mainsail', 'main topsail'])
    expect(plans[2]).toContain('1 in mainsail')
  })

  it('tells of a sail she has not, with the nearest', () => {
    expect(built('  fresh, mainsal and every topsal\n').told).toEqual([
      'error name/unknown: There is no sail "mainsal". Did you mean "mainsail"?',
      'error name/unknown: There is no sail "every topsal". Did you mean "every topsail", "every royal", "every gaff topsail"?',
    ])
  })

  it.each([
    ['  fresh\n', /^error canvas\/empty: It isn't said what "fresh" carries\./],
    ['  fresh, jib, without jib\n', /^error canvas\/empty/],
    ['  fresh, jib\n  Fresh, mainsail\n', /^error name\/twice: The canvas "Fresh" is given twice\./],
    ['  fresh, jib and mainsail and jib\n', /^warning name\/twice: "jib" is carried twice\./],
    ['  fresh, 3 reefs in mainsail\n', /^error canvas\/no-such-reef: .* 3 reefs: it has 2\./],
    ['  fresh, 1 reef in jib\n', /^error canvas\/no-such-reef: .* no reef is told of\./],
    ['  fresh, like stormy, jib\n', /^error name\/unknown: There is no canvas above "stormy"\./],
    ['  fresh, jib, 14 mm thick\n', /^error syntax\/clause-misplaced/],
    ['  fresh, reefs in mainsail\n', /^error syntax\//],
  ])('%j', (plans, told) => {
    const found = built(plans).told
    expect(found).toHaveLength(1)
    expect(found[0]).toMatch(told)
  })

  it('is written for every example vessel, and the most sail is the first', () => {
    for (const name of exampleRigs) {
      const { rig, figures } = compiledRig(name).value
      const areas = figures.canvas().map(({ balance: { area } }) => (area.known ? area.value : Number.NaN))
      expect(rig.canvas.length, name).toBeGreaterThan(1)
      expect(areas, name).toEqual(areas.toSorted((a, b) => b - a))
    }
  })
})
