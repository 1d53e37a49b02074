import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { beforeAll, expect, it } from 'vitest'
import { tableNames } from '../../src/reeve/index.ts'
import { builtCli, run } from '../support/built-cli.ts'

let cli = ''
beforeAll(async () => {
  cli = await builtCli()
}, 60_000)

const tablesOf = (vessel: string) => fileURLToPath(new URL(`../tables/${vessel}`, import.meta.url))
const empty = () => mkdtempSync(join(tmpdir(), 'crosstree-'))

/** A copy of a vessel's tables. */
function copied(vessel: string): string {
  const folder = empty()
  for (const name of tableNames) {
    const file = join(tablesOf(vessel), `${name}.csv`)
    if (existsSync(file)) copyFileSync(file, join(folder, `${name}.csv`))
  }
  return folder
}

it('writes a rig that is sound and fair, and never over another', () => {
  const file = join(empty(), 'reeved.rig')
  const args = ['reeve', tablesOf('schooner-pellow-finch'), '--into', file]
  expect(run(cli, args)).toEqual({ code: 0, out: '', err: '' })
  expect(run(cli, ['check', file]).code).toBe(0)
  expect(run(cli, ['fair', '--check', file]).code).toBe(0)
  const before = readFileSync(file, 'utf8')
  expect(run(cli, args)).toEqual({ code: 2, out: '', err: expect.stringContaining('is there already') })
  expect(readFileSync(file, 'utf8')).toBe(before)
})

it('writes on standard output what it can, and tells of what is left to be given', () => {
  const { code, out, err } = run(cli, ['reeve', tablesOf('brigantine-hazel-dotterel')])
  expect([code, out.split('\n')[0]]).toEqual([0, '# Hazel Dotterel, from her tables.'])
  expect(err).toMatch(/lines\.csv:\d+:\d+: note table\/left-out: lines\.csv, row \d+, rail: /)
})

it('tells of a fault with file, line and column, and writes nothing', () => {
  const folder = copied('schooner-pellow-finch')
  const rails = join(folder, 'rails.csv')
  writeFileSync(rails, readFileSync(rails, 'utf8').replace(',11,26.0,', ',eleven,26.0,'))
  const { code, out, err } = run(cli, ['reeve', folder])
  expect([code, out]).toEqual([1, ''])
  expect(err).toMatch(
    /rails\.csv:4:\d+: error table\/no-number: rails\.csv, row 4, pins: "eleven" is no number\./,
  )
})

it('answers a folder without tables, or with what is no table, in a line', () => {
  const folder = copied('schooner-pellow-finch')
  writeFileSync(join(folder, 'deck.csv'), Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13))
  expect(run(cli, ['reeve', folder])).toEqual({
    code: 1,
    out: '',
    err: expect.stringContaining('This is no text'),
  })
  rmSync(join(folder, 'lines.csv'))
  rmSync(join(folder, 'sails.csv'))
  expect(run(cli, ['reeve', folder])).toEqual({
    code: 2,
    out: '',
    err: expect.stringMatching(/has no sails\.csv, no lines\.csv\.\n$/),
  })
})
