import { vec3 } from 'gl-matrix'
import { describe, expect, it } from 'vitest'
import { type LeadFigures, leadFigures, tail } from '../../../src/reckon/leads/index.ts'
import type { Line, Rig } from '../../../src/rig/index.ts'
import { number, rows, type VesselName, vessels } from '../../rigs/tables.ts'
import { compiledRig, compiledText } from '../../support/compiled.ts'

const figuresOf = (rig: Rig, address: string): LeadFigures => {
  const figures = leadFigures(rig).get(address)
  if (!figures) throw new Error(`no line ${address}`)
  return figures
}

const told = (figure: { readonly known: boolean; readonly value?: number; readonly because?: string }) =>
  figure.known ? figure.value : figure.because

const example = (line: string) => `
spars
  boom, from 0.00 m aft 7.00 m up to 3.00 m aft 7.00 m up
rails
  rail at 0.00 m aft 1.00 m up, marked R
lines
  lift single, ${line}
    upper block at 0.00 m aft 11.00 m up
    through upper block to 3.00 m aft 7.00 m up
belay lift to rail
`

describe('the worked example of the page', () => {
  const { rig } = compiledText(example('rove luff, tops boom on boom, travels 2.00 m')).value
  const lift = figuresOf(rig, 'lift')

  it('has its lengths', () => {
    expect(told(lift.slack)).toBeCloseTo(25, 9)
    expect(told(lift.home)).toBeCloseTo(19, 9)
    expect(told(lift.hauled)).toBeCloseTo(6, 9)
    expect(told(lift.length)).toBeCloseTo(29, 9)
  })

  it('turns by 143.13 degrees at the block', () => {
    const turns = lift.way.known ? lift.way.value.turns : []
    expect(turns.map(({ turn }) => (turn * 180) / Math.PI)).toEqual([expect.closeTo(143.13, 2)])
  })
})

describe('a tackle said to stand below', () => {
  const { rig } = compiledText(example('rove luff below, tops boom on boom, travels 2.00 m')).value
  const lift = figuresOf(rig, 'lift')

  it('leaves one part to go on to the load', () => {
    expect(rig.lines.map(({ purchase, lead }) => [purchase, lead.at(-1)?.parts])).toEqual([[['luff'], 1]])
  })

  it('hauls as much, and is cut from a pendant and a fall', () => {
    expect(told(lift.hauled)).toBeCloseTo(6, 9)
    expect(lift.pieces.known && lift.pieces.value).toEqual([
      { part: 'pendant', length: 15 - 2.5 },
      { part: 'fall', length: 3 * 2.5 + tail },
    ])
  })

  it('turns its rope over every lead beside its own sheaves', () => {
    const leads = (said: string) => {
      const { figures } = compiledText(example(`rove ${said}, tops boom on boom, travels 2.00 m`)).value
      return told(figures.loads().get('lift')?.leads ?? { known: false })
    }
    expect([leads('luff'), leads('luff below')]).toEqual([0, 1])
  })
})

describe('what is not said', () => {
  const unknown = (line: string) => figuresOf(compiledText(example(line)).value.rig, 'lift')

  it.each([
    ['a travel', 'rove luff, tops boom on boom', 'How far the boom travels is not said.'],
    ['a deed', 'rove luff, travels 2.00 m', 'What it does is not said.'],
    ['a purchase', 'tops boom on boom, travels 2.00 m', 'No purchase is said.'],
  ])('without %s a line has no length, and says why', (_, line, because) => {
    expect(told(unknown(line).length)).toBe(because)
  })

  it('never takes a stated length for the length', () => {
    const line = 'rove luff, tops boom on boom, travels 2.00 m'
    expect(told(unknown(`${line}, cut 3.00 m`).length)).toBe(told(unknown(line).length))
    expect(unknown('rove luff, cut 3.00 m').length.known).toBe(false)
  })

  it('tells of a lead that stops short', () => {
    const text = example('rove luff, tops boom on boom').replace('upper block at', 'other block at')
    const { length } = figuresOf(compiledText(text).value.rig, 'lift')
    expect(told(length)).toBe('There is no "upper block" here.')
  })

  it('has no length below zero, whatever travel is said', () => {
    const { home, slack } = unknown('rove luff, tops boom on boom, travels 900.00 m')
    expect(told(home)).toBeCloseTo(10, 9)
    expect(told(slack)).toBeCloseTo(25, 9)
  })
})

const gaffRig = (halyardEnd: string, sheet = '') => `
masts
  mast, stepped 5.00 m aft 1.00 m up
    lower mast to 12.00 m up
spars
  sail gaff, from 5.00 m aft 8.00 m up to 9.00 m aft 11.00 m up, hoists from 3.00 m up
  sail boom, from 5.00 m aft 2.50 m up to 11.00 m aft 2.50 m up
sails
  sail, gaff sail on sail gaff and sail boom
    tack 5.00 m aft 2.60 m up, throat 5.00 m aft 8.00 m up
    peak 9.00 m aft 11.00 m up, clew 10.50 m aft 2.60 m up
    gear own gaff sail
gear own gaff sail
  peak halyard single, rove luff
    hoists peak
    answered by the sail's own pull
    through 5.20 m aft 12.00 m up to ${halyardEnd}
  sheet single, rove luff
    draws boom in
    answered by the sail's own pull
    through 10.00 m aft 1.20 m up to 10.00 m aft 2.50 m up
rails
  mast cleat at 5.00 m aft 1.50 m up, marked MC
  horse cleat at 10.00 m aft 1.10 m up, marked HC
belay sail peak halyard to mast cleat
belay sail sheet to horse cleat
${sheet}`

describe('a gaff sail whose travels are not said', () => {
  const travelOf = (end: string, line: string, more = '') =>
    told(figuresOf(compiledText(gaffRig(end, more)).value.rig, `sail.${line}`).travel)

  // The block stands 2 m out: lowered at (7, 3), hoisted at (5 + 2 x 4/5, 8 + 2 x 3/5).
  const hoisted = Math.hypot(7 - 6.6, 9.2 - 3)

  it('hoists the block of its peak halyard from the lowered gaff to the gaff as set, told either way', () => {
    expect(travelOf('7.00 m aft 3.00 m up', 'peak-halyard')).toBeCloseTo(hoisted, 9)
    expect(travelOf('6.60 m aft 9.20 m up', 'peak-halyard')).toBeCloseTo(hoisted, 9)
  })

  it('swings its boom to 80 degrees, or as far as the aftermost shroud lets it', () => {
    const chord = (degrees: number) => 2 * 5 * Math.sin((degrees * Math.PI) / 360)
    expect(travelOf('7.00 m aft 3.00 m up', 'sheet')).toBeCloseTo(chord(80), 9)
    const shrouds =
      'stays\n  shrouds, 3 a side from 5.00 m aft 2.00 m out 10.00 m up to 5.00 m aft 2.00 m out 1.00 m up, 1.00 m apart\n'
    const at = 2 * (7.5 / 9)
    expect(travelOf('7.00 m aft 3.00 m up', 'sheet', shrouds)).toBeCloseTo(
      chord((Math.atan2(2, at) * 180) / Math.PI),
      9,
    )
  })
})

// The library reckons with 32 bits; near half a turn an angle's cosine loses half of its digits.
const in32Bits = 1e-3

// An independent library goes along the same points.
describe.each(vessels)('%s against another reckoning', vessel => {
  const { rig } = compiledRig(vessel).value
  const point = ({ at }: Line['lead'][number]) => vec3.fromValues(at.x, at.y, at.z)

  it('measures the same stretches and the same turns', () => {
    const figures = leadFigures(rig)
    const wanted = rig.lines.map(line => {
      const points = line.lead.map(point)
      const steps = points.slice(1).map((to, i) => vec3.sub(vec3.create(), to, points[i] as vec3))
      return [
        steps.reduce((sum, step) => sum + vec3.length(step), 0),
        vec3.angle(steps[0] as vec3, [0, 0, 1]),
        ...steps.slice(1).map((step, i) => vec3.angle(steps[i] as vec3, step)),
      ]
    })
    const found = rig.lines.map(({ address }) => {
      const way = figures.get(address)?.way
      if (!way?.known) throw new Error(`${address}: ${way?.because}`)
      const { lead, last, lean, turns } = way.value
      return [lead + last, lean, ...turns.map(({ turn }) => turn)]
    })
    expect(found.map(({ length }) => length)).toEqual(wanted.map(({ length }) => length))
    const all = wanted.flat()
    const off = found.flat().map((figure, i) => Math.abs(figure - (all[i] ?? Number.NaN)))
    expect(Math.max(...off)).toBeLessThan(in32Bits)
  })
})

/**
 * The tables cut a halyard on a tye, a gaff's downhaul, a jib's sheet and a course's tack and sheet with a run-out of
 * their own rule; of an outhaul's tackle they cut no more than its travel.
 */
const cutOtherwise = [
  'upper topsail halyard',
  'topgallant halyard',
  'royal halyard',
  'fore topsail halyard',
  'gaff downhaul',
  'clew outhaul',
  'sheet port',
  'sheet starboard',
  'course tack port',
  'course tack starboard',
  'vang port',
  'vang starboard',
  'staysail tack',
]

describe.each(vessels)('%s against her tables', vessel => {
  const { rig } = compiledRig(vessel).value
  const table = new Map(rows(vessel as VesselName, 'lines').map(row => [row.name, row]))
  const lines = [...leadFigures(rig)].map(([address, figures]) => {
    const line = rig.lineAt.get(address) as Line
    const name = line.side ? `${line.words} ${line.side}` : line.words
    return { name, line, figures, row: table.get(name) }
  })

  it('knows the rope of every line', () => {
    const unknown = lines.flatMap(({ name, figures: { length } }) =>
      length.known ? [] : `${name}: ${length.because}`,
    )
    expect(unknown).toEqual([])
  })

  it('cuts each line within 5 per cent and a metre of the tables, but for those cut by another rule', () => {
    const off = lines.flatMap(({ name, figures: { length }, row }) => {
      if (cutOtherwise.some(one => name.endsWith(one))) return []
      const wanted = number(row, 'length_m')
      const found = length.known ? length.value : Number.NaN
      return Math.abs(found - wanted) <= 0.05 * wanted + 1 ? [] : [`${name}: ${found} for ${wanted}`]
    })
    expect(off).toEqual([])
  })

  it('carries as much in all as the tables, within 5 per cent', () => {
    const sum = lines.reduce((all, { figures: { length } }) => all + (length.known ? length.value : 0), 0)
    const wanted = lines.reduce((all, { row }) => all + number(row, 'length_m'), 0)
    expect(Math.abs(sum / wanted - 1)).toBeLessThan(0.05)
  })

  it('moves the load as far as the tables, but for braces, whose whole swing is reckoned', () => {
    const off = lines.flatMap(({ name, line, figures: { travel } }) => {
      if (line.kind === 'brace') return []
      const wanted = number(row(name), 'travel_m')
      const found = travel.known ? travel.value : Number.NaN
      return Math.abs(found - wanted) <= 0.1 * wanted + 0.4 ? [] : [`${name}: ${found} for ${wanted}`]
    })
    expect(off).toEqual([])
  })

  it('leaves the tail at the pin, and hauls what its parts and its travel come to', () => {
    for (const { figures } of lines) {
      const { slack, home, hauled, length } = figures
      expect(told(length)).toBeCloseTo(Number(told(slack)) + tail, 9)
      expect(told(hauled)).toBeCloseTo(Number(told(slack)) - Number(told(home)), 9)
    }
  })

  const row = (name: string) => table.get(name)
})
