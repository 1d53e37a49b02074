import fc from 'fast-check'
import { expect, it } from 'vitest'
import { reeve } from '../../src/reeve/index.ts'
import { compiledRig, compiledText, exampleFiles } from '../support/compiled.ts'
import { tablesOfRig } from '../support/rig-tables.ts'
import { differences } from './differences.ts'
import { pairsInOneRow, scrambledTables } from './scrambled-tables.ts'
import { sourcesOf } from './tables.ts'

const rigs = ['schooner-pellow-finch', 'cutter-morrow-pipit', 'ketch-bracken-loom', 'brig-quill-marten']

it.each(rigs)('%s is the same rig, however a spreadsheet saves her tables', name => {
  const { tables, rows } = tablesOfRig(compiledRig(name).value)
  const plain = compiledText(reeve(sourcesOf(tables), exampleFiles).value).value
  fc.assert(
    fc.property(scrambledTables(rows), other => {
      const { value, findings } = reeve(sourcesOf(other), exampleFiles)
      expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([])
      expect(differences(plain, compiledText(value).value)).toEqual([])
    }),
    { numRuns: 3 },
  )
})

it('reads pairs that are told in one row', () => {
  const { rows } = tablesOfRig(compiledRig('schooner-pellow-finch').value)
  const lines = pairsInOneRow(rows).get('lines')
  expect(lines?.rows.filter(row => row.includes('P+S')).length).toBeGreaterThan(15)
  expect(lines?.rows.length).toBeLessThan(rows.get('lines')?.rows.length ?? 0)
})
