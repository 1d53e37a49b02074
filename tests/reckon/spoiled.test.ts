import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { jsonFigures } from '../../src/press/figures/index.ts'
import { plainTables } from '../../src/press/table/index.ts'
import { reckon } from '../../src/reckon/index.ts'
import { reckoningRecord, reckoningTables } from '../../src/sheets/reckoning/index.ts'
import { compiledText, exampleText } from '../support/compiled.ts'

const schema = JSON.parse(
  readFileSync(new URL('../../src/press/figures/reckon.schema.json', import.meta.url), 'utf8'),
)
const isValid = new Ajv().compile(schema)
const text = exampleText('schooner-pellow-finch')
const numbers = [...text.matchAll(/\d+(?:\.\d+)?(?= (?:m|mm|kg|deg)\b)/g)]
const lines = text.split('\n')

/** Whatever the text: every figure is a number or a reason, in JSON and in the tables. */
function expectSound(spoiled: string): void {
  const { rig } = compiledText(spoiled).value
  const figures = reckon(rig)
  const json = jsonFigures(reckoningRecord(rig, figures))
  expect(json).not.toMatch(/: null|NaN|Infinity/)
  isValid(JSON.parse(json))
  expect(isValid.errors ?? []).toEqual([])
  expect(plainTables(reckoningTables(rig, figures))).not.toMatch(/NaN|Infinity|undefined/)
}

test('a measure that is nothing, below nothing, tiny, huge or no number', () => {
  const wrong = fc.constantFrom('0', '0.00', '-3', '1e999', '0.0001', '99999', 'x', '1,250')
  fc.assert(
    fc.property(fc.integer({ min: 0, max: numbers.length - 1 }), wrong, (index, number) => {
      const at = numbers[index]
      if (at?.index === undefined) return
      expectSound(text.slice(0, at.index) + number + text.slice(at.index + at[0].length))
    }),
    { numRuns: 150, seed: 4 },
  )
})

test('a line of the text left out, or told twice', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: lines.length - 1 }), fc.boolean(), (index, isTwice) => {
      const line = lines[index] ?? ''
      expectSound(lines.toSpliced(index, 1, ...(isTwice ? [line, line] : [])).join('\n'))
    }),
    { numRuns: 100, seed: 4 },
  )
})

test('names that are keys of every object, and control characters, are text', () => {
  const { rig } = compiledText(
    'vessel "\u001b[31mMole"\n  cutter\n\nstays\n  "__proto__" stay\n\nsails\n  constructor, headsail on "__proto__" stay\n    tack 0 m aft 1 m up, head 3 m aft 9 m up, clew 4 m aft 1 m up\n',
  ).value
  const tables = plainTables(reckoningTables(rig, reckon(rig)))
  expect(tables).not.toContain('\u001b')
  expect(tables).toContain('\\u{1b}[31mMole')
  expectSound('vessel "__proto__"\n  cutter\n')
})
