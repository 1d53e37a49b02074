import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { reeve, type TableName, tableNames } from '../../src/reeve/index.ts'
import { compiledRig, compiledText, exampleFiles } from '../support/compiled.ts'
import { tablesOfRig } from '../support/rig-tables.ts'
import { spoiled } from './spoiled-tables.ts'
import { sourcesOf } from './tables.ts'

const { rows } = tablesOfRig(compiledRig('ketch-bracken-loom').value)
const sound = new Map([...rows].map(([name, { columns, rows }]) => [name, [columns, ...rows]] as const))

/** Reeves tables, sound or not: findings with their places and no text, or a text that can be read. */
function reeveAny(tables: ReadonlyMap<TableName, string>): void {
  const sources = sourcesOf(tables)
  const { value, findings } = reeve(sources, exampleFiles)
  for (const { at, message, rule } of findings) {
    const source = [...sources.values()].find(({ name }) => name === at.source)
    expect(source, rule).toBeDefined()
    expect(
      at.start <= at.end && at.end <= (source?.text.length ?? 0),
      `${message} ${at.start} ${at.end}`,
    ).toBe(true)
    expect(message).toMatch(/^\w+\.csv(?:, row \d+[,:]| has | is )/)
    expect(message.length).toBeLessThan(400)
  }
  const isRefused = findings.some(({ severity }) => severity === 'error')
  expect(value === '').toBe(isRefused)
  if (isRefused) return
  const told = compiledText(value).findings.filter(
    ({ rule, severity }) => severity === 'error' && /^syntax\//.test(rule),
  )
  expect(
    told.map(({ message, at }) => `${message} ${JSON.stringify(value.slice(at.start - 40, at.end + 20))}`),
  ).toEqual([])
}

describe('tables that are amiss', () => {
  it('are told of, cell by cell, or reeved into a text that can be read', () => {
    fc.assert(fc.property(spoiled(sound), reeveAny), { numRuns: 60 })
  })

  it('of any text whatever are told of', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 200 }),
      fc.stringMatching(/^[",;\t\n\r a]{0,40}$/),
    )
    const tables = fc.tuple(...tableNames.map(name => fc.option(text.map(said => [name, said] as const))))
    fc.assert(
      fc.property(tables, given => reeveAny(new Map(given.filter(one => one !== null)))),
      { numRuns: 500 },
    )
  })

  it.each([
    [
      'lines',
      'id,name,kind,acts_on,rail,pin\n',
      (i: number) => `l${i},line ${i} of sail ${i},sheet,jib ${i},R${i},${i}\n`,
    ],
    ['spars', 'spar,kind,mast,x0,z0,x1,z1\n', (i: number) => `spar ${i},brace,fore,a,b,c,d\n`],
    ['leads', 'line,x,y,z\n', (i: number) => `line ${i},1,2,3\n`],
    ['sails', 'sail,type,class,bent_to\n', (i: number) => `sail ${i},square,course,yard ${i}\n`],
    [
      'rails',
      'rail,kind,x_first,y_first,x_last,y_last,z,pins\n',
      (i: number) => `R${i},rail,1,2,3,4,5,200\n`,
    ],
  ] as const)('that are very long are met in bounded time: %s', (name, head, row) => {
    const text = head + Array.from({ length: 1900 }, (_, i) => row(i)).join('')
    const before = process.cpuUsage()
    reeve(sourcesOf(new Map([[name, text]])), exampleFiles)
    const { user, system } = process.cpuUsage(before)
    expect((user + system) / 1e6).toBeLessThan(20)
  })
})
