import { describe, expect, it } from 'vitest'
import type { Point3 } from '../../src/measure/index.ts'
import type { Line, Rig, Sail, Spar } from '../../src/rig/index.ts'
import { compiledRig } from '../support/compiled.ts'
import { number, type Row, rows, type VesselName, vessels } from './tables.ts'

// A place that the gear gives as a share of a yard or along a rake may differ by two centimetres from the one
// measured on board.
const place = 0.02
// The tables print areas to a tenth of a square metre, from corners not yet rounded to centimetres: half a
// centimetre along a side of ten metres is as much again.
const area = 0.1

describe.each(vessels)('%s against her tables', vessel => {
  const { value, findings } = compiledRig(vessel)
  const { rig, figures } = value

  it('compiles without an error or a warning', () => {
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([])
  })

  it('has every line of the tables and no other', () => {
    expect(rig.lines.map(nameOf).toSorted()).toEqual(
      tableLines(vessel)
        .map(row => row.name)
        .toSorted(),
    )
  })

  it('makes each line fast where the tables have it', () => {
    const said = byLine(rig, ({ belay }) => belay && `${belay.rail} ${belay.number}`)
    expect(said).toEqual(byRow(vessel, row => `${row.rail} ${row.pin}`))
  })

  it('gives each line its rope, its purchase and its hands', () => {
    const said = byLine(rig, ({ rope, purchase, hands }) => ({
      diameter: rope && Math.round(rope.diameter * 1000),
      material: rope?.material,
      purchase: purchase.join('+'),
      hands,
    }))
    const wanted = byRow(vessel, row => ({
      diameter: number(row, 'rope_mm'),
      material: row.material,
      purchase: row.purchase,
      hands: number(row, 'hands'),
    }))
    expect(said).toEqual(wanted)
  })

  it('eases with each line what the tables ease', () => {
    const nameAt = new Map(rig.lines.map(line => [line.address, nameOf(line)]))
    const nameById = new Map(tableLines(vessel).map(row => [row.id, row.name]))
    const said = byLine(rig, line => line.counterparts.map(address => nameAt.get(address)).toSorted())
    const wanted = byRow(vessel, row =>
      (row.opposes ?? '')
        .split(';')
        .filter(id => id !== '')
        .map(id => nameById.get(id))
        .toSorted(),
    )
    expect(said).toEqual(wanted)
  })

  it('says what answers every line, if only the pull of its sail', () => {
    const orphans = rig.lines.filter(line => line.counterparts.length === 0 && line.answeredBy === undefined)
    expect(orphans.map(nameOf)).toEqual([])
  })

  it('says no other travel than the tables', () => {
    const travels = new Map(tableLines(vessel).map(row => [row.name, number(row, 'travel_m')]))
    const said = rig.lines.flatMap(line => (line.travel === undefined ? [] : [[nameOf(line), line.travel]]))
    expect(said).toEqual(said.map(([name]) => [name, travels.get(name as string)]))
  })

  it('leads each line through the points of the tables', () => {
    const idByName = new Map(tableLines(vessel).map(row => [row.name, row.id]))
    const leads = rows(vessel, 'leads')
    const astray = rig.lines.flatMap(line =>
      strays(
        line,
        leads.filter(row => row.line === idByName.get(nameOf(line))),
      ),
    )
    expect(astray).toEqual([])
  })

  it('has the rails and every place of them', () => {
    const said = Object.fromEntries(
      rig.rails.map(({ code, places, first, last }) => [
        code,
        { pins: places.length, first: rounded(first), last: rounded(last) },
      ]),
    )
    const wanted = rows(vessel, 'rails').map(row => [
      row.rail,
      {
        pins: number(row, 'pins'),
        first: [number(row, 'x_first'), number(row, 'y_first'), number(row, 'z')],
        last: [number(row, 'x_last'), number(row, 'y_last'), number(row, 'z')],
      },
    ])
    expect(said).toEqual(Object.fromEntries(wanted))
  })

  it('has the masts, spars and stays where the tables have them', () => {
    const astray = rows(vessel, 'spars').flatMap(row => sparStrays(rig, row))
    expect(astray).toEqual([])
    expect(rig.spars).toHaveLength(
      rows(vessel, 'spars').filter(({ kind }) => kind !== 'mast' && kind !== 'stay').length,
    )
  })

  it('cuts the sails to the corners and the areas of the tables', () => {
    expect(rig.sails.map(({ name }) => name).toSorted()).toEqual(
      rows(vessel, 'sails')
        .map(({ sail }) => sail)
        .toSorted(),
    )
    for (const row of rows(vessel, 'sails')) {
      const sail = rig.sailAt.get(row.sail ?? '')
      expect(sail && cut(sail), row.sail).toEqual(tableCut(row))
      const reckoned = figures.sails.get(row.sail ?? '')?.area
      const off = reckoned?.known
        ? Math.abs(reckoned.value - number(row, 'area_m2'))
        : Number.POSITIVE_INFINITY
      expect(off, `area of the ${row.sail}`).toBeLessThanOrEqual(area)
    }
  })

  it('sets the sails in the order of the tables', () => {
    const wanted = rows(vessel, 'sails').toSorted((a, b) => number(a, 'set_order') - number(b, 'set_order'))
    expect(rig.order).toEqual(wanted.map(({ sail }) => sail))
  })

  it('has the things on deck', () => {
    const said = rig.deck.map(({ kind, x0, x1, y0, y1, top }) => [kind, x0, x1, y0, y1, top].join(' '))
    const wanted = rows(vessel, 'deck').map(row =>
      [row.kind, ...['x0', 'x1', 'y0', 'y1', 'z_top'].map(column => number(row, column))].join(' '),
    )
    expect(said.toSorted()).toEqual(wanted.toSorted())
  })

  it('has the measures of the hull', () => {
    const fact = new Map(rows(vessel, 'hull').map(row => [row.key, row]))
    const value = (key: string) => number(fact.get(key), 'value')
    expect(rig.vessel).toMatchObject({
      name: fact.get('name')?.value,
      waterline: value('lwl'),
      betweenPerpendiculars: value('lbp'),
      overSpars: value('length_sparred'),
      beam: value('beam'),
      draught: value('draught'),
      displacement: value('displacement') * 1000,
      lateralCentre: { x: value('clr_x'), y: 0, z: value('clr_z') },
      metacentricHeight: value('gm'),
      handsInAll: value('hands_all'),
      handsInWatch: value('hands_watch'),
    })
    expect(rig.vessel.decks[0]?.height).toBe(value('main_deck_z'))
  })

  it('has every rail worked by one station, and every hand at one', () => {
    expect(rig.rails.filter(rail => rail.station === undefined).map(({ code }) => code)).toEqual([])
    const hands = (of: 'handsInAll' | 'handsInWatch') =>
      rig.stations.reduce((total, station) => total + (station[of] ?? 0), 0)
    expect(hands('handsInAll')).toBe(rig.vessel.handsInAll)
    expect(hands('handsInWatch')).toBe(rig.vessel.handsInWatch)
  })
})

const tableLines = (vessel: VesselName): readonly Row[] => rows(vessel, 'lines')

/** The name a table gives a line: its words, and its side if it is one of a pair. */
const nameOf = (line: Line): string => (line.side ? `${line.words} ${line.side}` : line.words)

const byLine = <T>(rig: Rig, tell: (line: Line) => T): Record<string, T> =>
  Object.fromEntries(rig.lines.map(line => [nameOf(line), tell(line)]))

const byRow = <T>(vessel: VesselName, tell: (row: Row) => T): Record<string, T> =>
  Object.fromEntries(tableLines(vessel).map(row => [row.name, tell(row)]))

/** A point in whole centimetres, as the tables print it. */
const rounded = (point: Point3 | undefined): readonly number[] | undefined =>
  point && [point.x, point.y, point.z].map(toCentimetres)

const toCentimetres = (metres: number): number => Math.round(metres * 100) / 100 + 0

const distance = (point: Point3, [x, y, z]: readonly number[]): number =>
  Math.hypot(point.x - (x ?? 0), point.y - (y ?? 0), point.z - (z ?? 0))

/** The points of a line's lead that lie astray of the table's, or bear other parts of the purchase. */
function strays(line: Line, wanted: readonly Row[]): readonly string[] {
  if (line.lead.length !== wanted.length) {
    return [`${nameOf(line)}: ${line.lead.length} points for ${wanted.length}; ${line.leadUnknown}`]
  }
  return line.lead.flatMap(({ at, what, parts }, i) => {
    const row = wanted[i]
    const off = distance(
      at,
      ['x', 'y', 'z'].map(axis => number(row, axis)),
    )
    const faults = []
    if (off > place) faults.push(`${nameOf(line)}, ${what}: ${off.toFixed(3)} m from the ${row?.what}`)
    if (parts !== number(row, 'parts'))
      faults.push(`${nameOf(line)}, ${what}: ${parts} parts for ${row?.parts}`)
    return faults
  })
}

/** What of a row of spars lies elsewhere in the rig, or has another size. */
function sparStrays(rig: Rig, row: Row): readonly string[] {
  const name = row.spar ?? ''
  const from = ['x0', 'z0'].map(column => number(row, column))
  const to = ['x1', 'z1'].map(column => number(row, column))
  const near = (what: string, point: Point3 | undefined, [x = 0, z = 0]: readonly number[]): string[] =>
    point && distance(point, [x, 0, z]) <= place
      ? []
      : [`${name}, ${what}: ${JSON.stringify(point)} for ${x} ${z}`]
  const same = (what: string, said: number | undefined, wanted: number): string[] =>
    said !== undefined && Math.abs(said - wanted) <= place ? [] : [`${name}, ${what}: ${said} for ${wanted}`]

  if (row.kind === 'mast') {
    const section = rig.mastAt.get(`${row.mast} mast`)?.sections.find(one => name.endsWith(` ${one.name}`))
    return [
      ...near('foot', section?.foot, from),
      ...near('head', section?.head, to),
      ...same('millimetres thick', (section?.diameter ?? 0) * 1000, number(row, 'dia_mm')),
    ]
  }
  if (row.kind === 'stay') {
    const stay = rig.standing.find(one => one.name === name)
    return [...near('head', stay?.from, from), ...near('foot', stay?.to, to)]
  }
  const spar = rig.sparAt.get(name === 'bowsprit and jib-boom' ? 'bowsprit' : name)
  if (!spar || spar.kind === 'studdingsail boom') return [`${name} is missing`]
  return [
    ...sparEnds(spar, near, from, to),
    ...same('metres long', spar.length, number(row, 'length_m')),
    ...same('millimetres thick', (spar.diameter ?? 0) * 1000, number(row, 'dia_mm')),
    ...same('kilograms', spar.mass, number(row, 'mass_kg')),
    ...(row.z_lowered ? same('lowered', spar.loweredHeight, number(row, 'z_lowered')) : []),
    ...(spar.kind !== 'bowsprit' && spar.hoists !== (row.hoists === 'yes') ? [`${name}: hoists or not`] : []),
  ]
}

function sparEnds(
  spar: Spar,
  near: (what: string, point: Point3 | undefined, wanted: readonly number[]) => readonly string[],
  from: readonly number[],
  to: readonly number[],
): readonly string[] {
  if (spar.kind === 'yard') return near('middle', spar.middle, from)
  return [...near('inner end', spar.inner, from), ...near('outer end', spar.outer, to)]
}

/** A sail's shape, in the columns of the tables. */
function cut(sail: Sail): Record<string, unknown> {
  if (sail.kind === 'square') {
    const { class: name, yard, footYard, head, foot, roach } = sail
    return {
      class: name,
      on: [yard],
      sheetedTo: footYard,
      shape: [head?.width, head?.height, foot?.width, foot?.height, roach],
    }
  }
  return {
    class: sail.class,
    on: sail.on,
    sheetedTo: sail.kind === 'fore-and-aft' ? sail.sheetedTo : undefined,
    shape: Object.fromEntries(sail.corners.map(({ name, at }) => [name, [at.x, at.z].map(toCentimetres)])),
  }
}

function tableCut(row: Row): Record<string, unknown> {
  if (row.type === 'square') {
    return {
      class: row.class,
      on: [row.bent_to],
      sheetedTo: row.foot_to || undefined,
      shape: ['head_w', 'head_z', 'foot_w', 'foot_z', 'roach'].map(column => number(row, column)),
    }
  }
  const corner = (x: string, z: string) => [number(row, x), number(row, z)]
  const boomed = row.class === 'gaff sail'
  return {
    class: row.class,
    on: boomed ? [row.bent_to, row.foot_to] : [row.bent_to],
    sheetedTo: row.class === 'gaff topsail' ? row.foot_to : undefined,
    shape: {
      tack: corner('tack_x', 'tack_z'),
      clew: corner('clew_x', 'clew_z'),
      [boomed ? 'peak' : 'head']: corner('head_x', 'headpt_z'),
      ...(boomed ? { throat: corner('throat_x', 'throat_z') } : {}),
    },
  }
}
