import {
  chmodSync,
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeAll, expect, it } from 'vitest'
import { builtCli, run } from '../support/built-cli.ts'

let cli = ''
let folder = ''
beforeAll(async () => {
  cli = await builtCli()
  folder = mkdtempSync(join(tmpdir(), 'crosstree-'))
}, 60_000)

const put = (name: string, text: string) => {
  const file = join(folder, name)
  writeFileSync(file, text)
  return file
}

const uneven = 'edition 1\nspars      # two of them\n\tfore   yard ,9 m long\n'
const even = 'edition 1\nspars      # two of them\n  fore yard, 9 m long\n'
const unsound = 'spars\n  fore   yard, 9 long\n'

it('sets a file fair in place, keeps its mode, and leaves nothing beside it', () => {
  const file = put('uneven.rig', uneven)
  chmodSync(file, 0o640)
  expect(run(cli, ['fair', file])).toEqual({ code: 0, out: '', err: '' })
  expect(readFileSync(file, 'utf8')).toBe(even)
  expect(statSync(file).mode & 0o777).toBe(0o640)
  expect(readdirSync(folder).filter(name => name.includes('uneven'))).toEqual(['uneven.rig'])
})

it('sets a file once that is named in two ways', () => {
  const file = put('twice.rig', uneven)
  const link = join(folder, 'link.rig')
  symlinkSync(file, link)
  expect(run(cli, ['fair', file, link])).toEqual({ code: 0, out: '', err: '' })
  expect(readFileSync(file, 'utf8')).toBe(even)
  expect(lstatSync(link).isSymbolicLink()).toBe(true)
})

it('does not touch a file that is fair', () => {
  const file = put('even.rig', even)
  const before = statSync(file).mtimeMs
  expect(run(cli, ['fair', file, file]).code).toBe(0)
  expect(statSync(file).mtimeMs).toBe(before)
})

it('writes standard input fair to standard output', () => {
  expect(run(cli, ['fair', '-'], { input: uneven })).toEqual({ code: 0, out: even, err: '' })
})

it('with --check only tells by its exit code', () => {
  const file = put('checked.rig', uneven)
  expect(run(cli, ['fair', '--check', file])).toEqual({ code: 1, out: '', err: '' })
  expect(readFileSync(file, 'utf8')).toBe(uneven)
  expect(run(cli, ['fair', '--check', put('checked-even.rig', even)])).toEqual({ code: 0, out: '', err: '' })
  expect(run(cli, ['fair', '--check', '-'], { input: uneven }).code).toBe(1)
})

it('says why it leaves a text alone, and sets the others fair', () => {
  const [bad, good] = [put('bad.rig', unsound), put('good.rig', uneven)]
  const ran = run(cli, ['fair', bad, good])
  expect(ran.code).toBe(1)
  expect(ran.out).toBe('')
  expect(ran.err).toContain('"9" wants a unit')
  expect(ran.err).toContain("bad.rig is left as it is: it can't be read soundly.")
  expect(readFileSync(bad, 'utf8')).toBe(unsound)
  expect(readFileSync(good, 'utf8')).toBe(even)
  expect(run(cli, ['fair', '-'], { input: unsound })).toMatchObject({ code: 1, out: unsound })
})

it('answers what is no rig file with 2', () => {
  expect(run(cli, ['fair', join(folder, 'nowhere.rig')]).code).toBe(2)
  expect(run(cli, ['fair']).code).toBe(2)
})
