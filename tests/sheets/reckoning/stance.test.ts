import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import { describe, expect, it } from 'vitest'
import { radians } from '../../../src/measure/index.ts'
import { jsonFigures } from '../../../src/press/figures/index.ts'
import { reckon, usual } from '../../../src/reckon/index.ts'
import { reckoningRecord, reckoningTables } from '../../../src/sheets/reckoning/index.ts'
import { compiledText, exampleText } from '../../support/compiled.ts'

const papers = exampleText('barque-harrow-tansy').replace(
  '  metacentric height 0.85 m',
  `  metacentric height 0.85 m
  righting arm 20 deg 0.32 m, 40 deg 0.62 m, 60 deg 0.58 m, 80 deg 0.30 m, 100 deg 0.00 m
  deck edge 24 deg
  exposed waters`,
)
const { rig } = compiledText(papers, 'barque-harrow-tansy.rig').value
const abeam = reckon(rig, { ...usual, offBow: radians(Math.PI / 2) })
const schema = new URL('../../../src/press/figures/reckon.schema.json', import.meta.url)
const isValid = new Ajv({ allErrors: true, strict: true }).compile(JSON.parse(readFileSync(schema, 'utf8')))

describe('a barque with her stability papers, the wind abeam', () => {
  const tables = new Map(reckoningTables(rig, abeam).map(table => [table.id, table]))
  const json = JSON.parse(jsonFigures(reckoningRecord(rig, abeam)))

  it('says beside each numeral that its equation was not checked', () => {
    const rows = tables.get('stability')?.rows ?? []
    const numerals = rows.filter(([name]) => name?.kind === 'words' && /171\.055, [XYZ]$/.test(name.words))
    expect(numerals).toHaveLength(3)
    for (const row of numerals) {
      expect(row.at(-1)).toEqual({ kind: 'words', words: 'equation not checked against the printed rule' })
    }
    for (const axis of ['x', 'y', 'z']) {
      expect(json.stability[axis].caution).toBe('equation not checked against the printed rule')
    }
  })

  it('shows every yard by both ways, squarer by the rule going up', () => {
    const yards = json.bracing.flatMap((mast: { yards: readonly { by_rule_rad: number }[] }) => mast.yards)
    expect(yards).toHaveLength(10)
    expect(tables.get('bracing')?.rows).toHaveLength(10)
    const [lower, above] = yards
    expect(above.by_rule_rad).toBeGreaterThan(lower.by_rule_rad)
    expect(tables.get('bracing')?.notes[0]).toContain('90.0° off the bow')
  })

  it('tells of each line how it turns, and of a lead what it passes', () => {
    expect(tables.get('ways')?.rows).toHaveLength(rig.pairAt.size)
    const turns = json.lines.map(({ turns }: { turns?: readonly unknown[] }) => turns?.length ?? Number.NaN)
    expect(turns).toEqual(rig.lines.map(({ lead }) => lead.length - 2))
  })

  it('keeps to the schema', () => {
    isValid(json)
    expect(isValid.errors ?? []).toEqual([])
  })
})

it('a vessel whose text says nothing of stability has no table of it', () => {
  const bare = compiledText(exampleText('barque-harrow-tansy'), 'barque-harrow-tansy.rig').value
  const ids = reckoningTables(bare.rig, bare.figures).map(({ id }) => id)
  expect(ids).not.toContain('stability')
  expect(ids).toContain('bracing')
})
