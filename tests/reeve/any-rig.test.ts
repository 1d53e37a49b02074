import { describe, expect, it } from 'vitest'
import { reeve } from '../../src/reeve/index.ts'
import { compiledRig, compiledText, exampleFiles, exampleRigs } from '../support/compiled.ts'
import { golden } from '../support/golden.ts'
import { tablesOfRig } from '../support/rig-tables.ts'
import { differences } from './differences.ts'
import { sourcesOf } from './tables.ts'

const trips = exampleRigs.map(name => {
  const told = compiledRig(name).value
  const { tables, leftOut } = tablesOfRig(told)
  const reeved = reeve(sourcesOf(tables), exampleFiles)
  const { value: found, findings } = compiledText(reeved.value)
  return {
    name,
    leftOut,
    reeved,
    findings: findings.filter(({ severity }) => severity !== 'note').map(({ message }) => message),
    differences: differences(told, found),
  }
})

/** Rigs of which the tables hold everything that is compared. */
const whole = [
  'barque-harrow-tansy',
  'cutter-morrow-pipit',
  'ketch-bracken-loom',
  'lugger-saffron-dunlin',
  'schooner-pellow-finch',
  'schooner-teasel-vane',
]

describe('a rig written as tables, and reeved from them', () => {
  it.each(trips)('$name has no fault in her tables', ({ reeved }) => {
    expect(reeved.findings.filter(({ severity }) => severity !== 'note')).toEqual([])
  })

  it.each(trips.filter(({ name }) => whole.includes(name)))(
    '$name is the same, figure for figure',
    ({ differences }) => {
      expect(differences).toEqual([])
    },
  )

  it('differs in what no table holds, and says so', () => {
    const page = pageOf()
    expect(golden('tables.md', page)).toBe(page)
  })
})

function pageOf(): string {
  const listed = (heading: string, rows: readonly string[]) =>
    rows.length === 0 ? [] : [`**${heading}**`, '', ...rows.map(row => `- ${row}`), '']
  return [
    '# What tables leave out',
    '',
    'Written by `tests/reeve/any-rig.test.ts`: each example rig written as tables, reeved from them, and compared.',
    '',
    ...trips.flatMap(({ name, leftOut, reeved, findings, differences }) => [
      `## ${name}`,
      '',
      ...listed(
        'No table holds',
        leftOut.map(([what, why]) => `${what}: ${why}.`),
      ),
      ...listed(
        'Told while reeving',
        reeved.findings.map(({ message }) => message),
      ),
      ...listed('Differs', differences),
      ...listed('Found in the reeved rig', findings),
    ]),
  ].join('\n')
}
