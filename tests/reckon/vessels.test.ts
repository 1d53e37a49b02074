import { polygonArea, polygonCentroid } from 'd3-polygon'
import { describe, expect, test } from 'vitest'
import { balanceOf, reckon } from '../../src/reckon/index.ts'
import { rows, vessels } from '../rigs/tables.ts'
import { compiledRig } from '../support/compiled.ts'

/**
 * The tables give lengths to the centimetre and areas to 0.1 m2, so an area is met to 0.1. They put a square sail's
 * centroid 0.6 m before the mast, the rigs hang their yards by their own trusses: 0.2 m fore and aft covers that.
 */
const tolerance = { area: 0.1, x: { square: 0.2, 'fore-and-aft': 0.1 }, z: 0.1 } as const

describe.each(vessels)('%s: every sail against her table', vessel => {
  const { rig } = compiledRig(vessel).value
  const figures = reckon(rig)

  test.each(rows(vessel, 'sails').map(row => [row.sail ?? '', row] as const))('%s', (name, row) => {
    const sail = rig.sailAt.get(name)
    const { area, centroid } = figures.sails.get(name) ?? {}
    if (!sail || sail.kind === 'studdingsail' || !area?.known || !centroid?.known)
      throw new Error(`The ${name} is not reckoned.`)
    expect(Math.abs(area.value - Number(row.area_m2))).toBeLessThanOrEqual(tolerance.area)
    expect(Math.abs(centroid.value.x - Number(row.ce_x))).toBeLessThanOrEqual(tolerance.x[sail.kind])
    expect(Math.abs(centroid.value.z - Number(row.ce_z))).toBeLessThanOrEqual(tolerance.z)
  })

  test('the fore-and-aft sails, against an independent library of polygons', () => {
    const sails = rig.sails.filter(sail => sail.kind === 'fore-and-aft')
    expect(sails.length).toBeGreaterThan(7)
    for (const sail of sails) {
      const ring = sail.corners.map(({ at }): [number, number] => [at.x, at.z])
      const { area, centroid } = figures.sails.get(sail.name) ?? {}
      const [x, z] = polygonCentroid(ring)
      expect(area?.known && area.value).toBeCloseTo(Math.abs(polygonArea(ring)), 9)
      expect(centroid?.known && centroid.value.x).toBeCloseTo(x, 9)
      expect(centroid?.known && centroid.value.z).toBeCloseTo(z, 9)
    }
  })

  test('the square sails, against the library on an outline of two hundred points', () => {
    for (const sail of rig.sails) {
      if (sail.kind !== 'square' || !sail.head || !sail.foot) continue
      const { head, foot, roach } = sail
      const bottom = Array.from({ length: 201 }, (_, i): [number, number] => {
        const share = i / 100 - 1
        return [(share * foot.width) / 2, foot.height + roach * (1 - share * share)]
      })
      const ring: [number, number][] = [
        ...bottom,
        [head.width / 2, head.height],
        [-head.width / 2, head.height],
      ]
      const { area, centroid } = figures.sails.get(sail.name) ?? {}
      expect(area?.known && area.value).toBeCloseTo(Math.abs(polygonArea(ring)), 2)
      expect(centroid?.known && centroid.value.z).toBeCloseTo(polygonCentroid(ring)[1], 3)
    }
  })
})

/** Area, CE x and CE z as sail is set one after another: check figures that came with the invented vessels. */
const settings: Readonly<Record<string, readonly (readonly [string, number, number, number])[]>> = {
  'barque-harrow-tansy': [
    ['fore topmast staysail', 49.3, 5.13, 10.56],
    ['main topmast staysail', 103.7, 13.31, 11.41],
    ['mizzen staysail', 137.5, 18.98, 10.45],
    ['inner jib', 182.0, 15.13, 10.63],
    ['spanker', 248.0, 23.41, 10.53],
    ['outer jib', 295.5, 19.75, 10.78],
    ['mizzen topmast staysail', 338.2, 21.76, 11.25],
    ['main topgallant staysail', 386.1, 21.58, 12.13],
    ['flying jib', 425.0, 19.4, 12.2],
    ['gaff topsail', 450.2, 20.81, 12.61],
    ['fore lower topsail', 505.8, 19.85, 12.79],
    ['main lower topsail', 563.4, 20.75, 12.98],
    ['fore upper topsail', 627.2, 19.88, 13.56],
    ['main upper topsail', 693.2, 20.73, 14.09],
    ['fore topgallant', 756.7, 20.02, 14.91],
    ['main topgallant', 822.4, 20.73, 15.66],
    ['fore royal', 853.7, 20.43, 16.14],
    ['main royal', 886.1, 20.74, 16.6],
    ['fore course', 991.5, 19.81, 15.8],
    ['main course', 1111.0, 20.74, 15.08],
  ],
  'schooner-pellow-finch': [
    ['mainsail', 86.8, 20.0, 8.46],
    ['foresail', 127.4, 16.96, 8.21],
    ['fore staysail', 150.3, 15.01, 7.86],
    ['jib', 174.0, 13.25, 7.67],
    ['outer jib', 198.1, 11.64, 7.63],
    ['main gaff topsail', 217.3, 12.19, 8.45],
    ['flying jib', 236.4, 11.03, 8.41],
    ['fore topsail', 279.8, 10.48, 9.33],
    ['fore topgallant', 300.6, 10.29, 9.99],
    ['main topmast staysail', 321.8, 10.43, 10.32],
  ],
}

describe.each(vessels)('%s: balance as sail is set', vessel => {
  const { rig } = compiledRig(vessel).value
  const figures = reckon(rig)
  const steps = settings[vessel] ?? []

  test.each(steps.map(([name], i) => [i + 1, name] as const))('step %i, the %s', (count, _name) => {
    const [, area, x, z] = steps[count - 1] ?? ['', 0, 0, 0]
    const set = balanceOf(
      rig,
      figures,
      steps.slice(0, count).map(([name]) => name),
    )
    if (!set.area.known || !set.centreOfEffort.known || !set.lead.known) throw new Error('Not reckoned.')
    // The table's sums are of rounded areas: half of 0.1 m2 a sail at the most.
    expect(Math.abs(set.area.value - area)).toBeLessThanOrEqual(0.1 + 0.05 * count)
    expect(Math.abs(set.centreOfEffort.value.x - x)).toBeLessThanOrEqual(0.2)
    expect(Math.abs(set.centreOfEffort.value.z - z)).toBeLessThanOrEqual(0.1)
    const lateral = rig.vessel.lateralCentre?.x ?? Number.NaN
    expect(Math.abs(set.lead.value.metres - (lateral - x))).toBeLessThanOrEqual(0.2)
  })

  test('all sail set is what the figures tell of her', () => {
    const all = balanceOf(
      rig,
      figures,
      rig.sails.map(({ name }) => name),
    )
    expect(figures.centreOfEffort).toEqual(all.centreOfEffort)
    expect(figures.lead).toEqual(all.lead)
    expect(figures.total).toEqual(all.area)
    const parts = [figures.square, figures.foreAndAft].map(part => (part.known ? part.value : Number.NaN))
    expect((parts[0] ?? 0) + (parts[1] ?? 0)).toBeCloseTo(all.area.known ? all.area.value : Number.NaN, 9)
  })

  test('a name twice counts once, and a name of no sail is said', () => {
    const [first = ''] = steps[0] ?? []
    expect(balanceOf(rig, figures, [first, first])).toEqual(balanceOf(rig, figures, [first]))
    expect(balanceOf(rig, figures, [first, 'moonraker']).area).toEqual({
      known: false,
      because: 'There is no sail called moonraker.',
    })
  })
})
