import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { parse, type Tree } from '../../src/syntax/index.ts'
import { run } from '../support/built-cli.ts'

vi.setConfig({ testTimeout: 120_000, hookTimeout: 240_000 })

const root = fileURLToPath(new URL('../..', import.meta.url))
/** A text from standard input. */
const tern = { input: 'edition 1\nvessel Tern\nspars\n  main yard, 12 long\n' }
let folder: string
let cli: string
let kept: string

beforeAll(() => {
  const cache = join(root, 'node_modules', '.cache')
  mkdirSync(cache, { recursive: true })
  folder = mkdtempSync(join(cache, 'crosstree-dist-'))
  cli = join(folder, 'cli.cjs')
  kept = join(folder, 'command.v8')
  const built = spawnSync(process.execPath, ['esbuild.config.mjs', folder], { cwd: root, encoding: 'utf8' })
  expect([built.status, built.stderr]).toEqual([0, ''])
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

test('the command as built starts every verb, and tells a wrong call in a line', () => {
  expect(run(cli, ['check', '-'], tern)).toMatchObject({ code: 1, err: '' })
  expect(run(cli, ['explain', 'belay/two-on-a-pin']).out).toContain('belay/two-on-a-pin')
  expect(run(cli, ['reckon', '-'], tern).out).toContain('Tern')
  expect(run(cli, ['draw', 'no.rig'])).toEqual({
    code: 2,
    out: '',
    err: "crosstree: no.rig can't be read: it isn't there.\n",
  })
})

test('it says the same with what V8 kept at the build, with nothing kept, and with what V8 refuses', () => {
  const said = run(cli, ['check', '-'], tern)
  expect(said.out).toContain('measure/unit-missing')
  expect(statSync(kept).size).toBeGreaterThan(100_000)
  const bytes = readFileSync(kept)
  writeFileSync(kept, bytes.subarray(0, bytes.length / 2))
  expect(run(cli, ['check', '-'], tern)).toEqual(said)
  writeFileSync(kept, 'made by another V8')
  expect(run(cli, ['check', '-'], tern)).toEqual(said)
  rmSync(kept)
  expect(run(cli, ['check', '-'], tern)).toEqual(said)
})

test('nothing is written beside the command when it runs', () => {
  rmSync(kept, { force: true })
  run(cli, ['check', '-'], tern)
  expect(() => statSync(kept)).toThrow('ENOENT')
})

test('the standard gear comes from the trees kept at the build, only as long as they are of the very same texts', () => {
  const trees = join(folder, 'trees')
  const gear = join(root, 'rigs', 'gear')
  const files = readdirSync(gear).filter(file => file.endsWith('.rig'))
  const keep = (change: (tree: Tree) => Tree) => {
    for (const file of files) {
      const tree = parse({
        name: `standard gear/${file}`,
        text: readFileSync(join(gear, file), 'utf8'),
      }).value
      writeFileSync(join(trees, `${file}.json`), JSON.stringify(change(tree)))
    }
  }
  for (const file of files) {
    const tree = JSON.parse(readFileSync(join(trees, `${file}.json`), 'utf8'))
    expect(tree).toEqual(parse({ name: `standard gear/${file}`, text: tree.source.text }).value)
    expect(tree.source.text).toBe(readFileSync(join(gear, file), 'utf8'))
  }
  const text = readFileSync(join(root, 'rigs', 'barque-harrow-tansy.rig'), 'utf8')
  const check = () =>
    run(cli, ['check', '--format', 'json', '-'], { input: text.replace('fore rail', 'far rail') })
  const said = check()
  keep(tree => ({ ...tree, pages: [] }))
  expect(check()).not.toEqual(said)
  keep(({ source }) => ({ source: { ...source, text: `${source.text} ` }, pages: [] }))
  expect(check()).toEqual(said)
  writeFileSync(join(trees, 'standard-gear.rig.json'), 'no tree')
  expect(check()).toEqual(said)
  rmSync(trees, { recursive: true })
  expect(check()).toEqual(said)
})
