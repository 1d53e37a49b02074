import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import { describe, expect, it, test } from 'vitest'
import { jsonFigures } from '../../src/press/figures/index.ts'
import { reckon, underCanvas } from '../../src/reckon/index.ts'
import { reckoningRecord } from '../../src/sheets/reckoning/index.ts'
import { compiledRig, compiledText, exampleRigs } from '../support/compiled.ts'

const schema = JSON.parse(
  readFileSync(new URL('../../src/press/figures/reckon.schema.json', import.meta.url), 'utf8'),
)
const isValid = new Ajv({ allErrors: true, strict: true }).compile(schema)

const told = (compiled: ReturnType<typeof compiledText>, carried: readonly string[] = []) => {
  const { rig } = compiled.value
  const sails = carried.map(sail => ({ sail, reefs: 0 }))
  const chosen = sails.length > 0 ? underCanvas(rig, { label: 'chosen', sails }) : undefined
  return JSON.parse(jsonFigures(reckoningRecord(rig, reckon(rig), chosen)))
}

describe.each(exampleRigs)('%s', name => {
  const json = told(compiledRig(name))

  it('keeps to its schema', () => {
    isValid(json)
    expect(isValid.errors ?? []).toEqual([])
  })

  it('tells every sail and every line, each figure or its reason', () => {
    const { rig } = compiledRig(name).value
    expect(json.sails.map((sail: { name: string }) => sail.name)).toEqual(rig.sails.map(sail => sail.name))
    expect(json.lines.length).toBe(rig.lines.length)
    for (const line of json.lines)
      for (const figure of ['length_m', 'pull_N', 'hands', 'safety'])
        expect(line[figure] ?? line.unknown?.[figure], `${line.name}: ${figure}`).toBeDefined()
  })

  it('has no number that is none, and no minus zero', () => {
    const { rig } = compiledRig(name).value
    const text = jsonFigures(reckoningRecord(rig, reckon(rig)))
    expect(text).not.toMatch(/null|NaN|Infinity|-0[,\n ]/)
  })
})

test('a set that is asked for stands under "chosen"', () => {
  const json = told(compiledRig('barque-harrow-tansy'), ['fore course', 'main course'])
  expect(json.chosen.sails).toEqual([
    { name: 'fore course', reefs: 0 },
    { name: 'main course', reefs: 0 },
  ])
  expect(json.chosen.total_area_m2).toBeCloseTo(225, 0)
  isValid(json)
  expect(isValid.errors ?? []).toEqual([])
})

test('a rig of names alone has no figures but reasons', () => {
  const json = told(
    compiledText(
      'bring in standard gear\n\nvessel Mole\n  cutter\n\nstays\n  jib stay\n\nsails\n  jib, headsail on jib stay\n    gear jib\n',
    ),
  )
  isValid(json)
  expect(isValid.errors ?? []).toEqual([])
  expect(json.total_area_m2).toBeUndefined()
  expect(json.unknown.total_area_m2).toBe('The jib is given no tack and no clew and no head.')
  expect(json.unknown.running_rigging_m).toMatch(/4 of 4 lines have no length/)
  expect(json.lines[0].unknown.pull_N).toBe('The jib is given no tack and no clew and no head.')
})

test('the schema refuses a figure it does not know', () => {
  const json = told(compiledRig('schooner-pellow-finch'))
  expect(isValid({ ...json, tonnage: 1 })).toBe(false)
  expect(isValid({ ...json, sails: [{ name: 'jib' }] })).toBe(false)
})
