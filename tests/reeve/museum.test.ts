import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { reeve, tableNames, tableText } from '../../src/reeve/index.ts'
import { compiledText, exampleFiles } from '../support/compiled.ts'
import { sourcesOf } from './tables.ts'

const folder = new URL('../tables/brigantine-hazel-dotterel/', import.meta.url)
const tables = new Map(
  tableNames
    .filter(name => name !== 'leads')
    .map(
      name => [name, tableText(readFileSync(new URL(`${name}.csv`, folder)), `${name}.csv`).value] as const,
    ),
)

describe("a museum's tables", () => {
  const reeved = reeve(sourcesOf(tables), exampleFiles)
  const { rig } = compiledText(reeved.value).value

  it('tell of what they leave to be given, and of nothing else', () => {
    expect(reeved.findings.map(({ severity, message }) => [severity, message])).toEqual([
      ['note', expect.stringMatching(/^lines\.csv, row \d+, rail: no rail and no pin are told/)],
    ])
    expect(reeved.value).toContain('# To be given: where the mainsail tricing line is made fast.')
    expect(reeved.value).toContain('# to be given: gaff blocks, guy block, sheet block, boom block')
  })

  it('are read in feet, inches and pounds', () => {
    const { waterline, beam, displacement } = rig.vessel
    expect([waterline, beam, displacement]).toEqual([28.04, 7.47, 290_000])
    expect(rig.sparAt.get('fore yard')).toMatchObject({ length: 13.41, diameter: 0.3048, mass: 471.7 })
    const buntline = rig.lineAt.get('fore.topsail.buntline.port')
    expect(buntline?.rope).toEqual({ diameter: 0.0127, material: 'manila' })
  })

  it('have pairs in one row, on rails told for both sides', () => {
    const clewlines = rig.pairAt.get('fore.topsail.clewline') ?? []
    expect(clewlines.map(({ side, belay }) => [side, belay?.rail, belay?.number])).toEqual([
      ['port', 'C-P', 5],
      ['starboard', 'C-S', 5],
    ])
    const braces = rig.pairAt.get('fore.topsail.brace') ?? []
    expect(braces.map(({ counterparts }) => counterparts)).toEqual([
      ['fore.topsail.brace.starboard'],
      ['fore.topsail.brace.port'],
    ])
  })

  it('give her all her sails in order, by the gear that is most nearly theirs', () => {
    expect(rig.order).toHaveLength(8)
    expect(Object.fromEntries(rig.sails.map(({ name, gear }) => [name, gear]))).toMatchObject({
      'fore course': 'course',
      'fore topsail': 'square topsail',
      'fore topgallant': 'topgallant',
      mainsail: 'gaff sail',
      'main gaff topsail': 'gaff topsail',
    })
  })
})
