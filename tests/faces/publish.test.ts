import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  renameSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { build } from 'esbuild'
import { beforeEach, describe, expect, it } from 'vitest'
import { Complaint } from '../../src/faces/complaint.ts'
import { type Finished, publish } from '../../src/faces/publish.ts'

let place = ''
let folder = ''
beforeEach(() => {
  place = mkdtempSync(join(tmpdir(), 'crosstree-'))
  folder = join(place, 'papers')
})

const none = () => false
const all = () => true
const plan = (bytes: string): readonly Finished[] => [{ name: 'plan.svg', bytes }]
const hidden = (what: string) => join(place, `.papers.${what}`)
const read = (...path: readonly string[]) => readFileSync(join(folder, ...path), 'utf8')

/** A process that is over: its number belongs to nobody. */
const deadPid = () => spawnSync(process.execPath, ['--version']).pid

function complaintOf(act: () => void): string {
  try {
    act()
  } catch (error) {
    expect(error).toBeInstanceOf(Complaint)
    return (error as Complaint).message
  }
  throw new Error('it was accepted')
}

describe('publish', () => {
  it('makes the folder and those above it, and leaves nothing hidden beside it', () => {
    folder = join(place, 'out', 'tern')
    publish(folder, [...plan('one'), { name: 'plan.pdf', bytes: Uint8Array.of(1, 2, 3) }], none)
    expect(readdirSync(folder).sort()).toEqual(['plan.pdf', 'plan.svg'])
    expect(read('plan.svg')).toBe('one')
    expect([...readFileSync(join(folder, 'plan.pdf'))]).toEqual([1, 2, 3])
    expect(readdirSync(join(place, 'out'))).toEqual(['tern'])
  })

  it('replaces papers, and takes away those it replaces by nothing', () => {
    publish(folder, [...plan('one'), { name: 'rail-lost.svg', bytes: 'old' }], none)
    publish(folder, plan('two'), all)
    expect(readdirSync(folder)).toEqual(['plan.svg'])
    expect(read('plan.svg')).toBe('two')
  })

  it('keeps whatever else the folder holds: files, folders, links', () => {
    mkdirSync(join(folder, 'notes', 'deep'), { recursive: true })
    writeFileSync(join(folder, 'letter.txt'), 'dear owner')
    writeFileSync(join(folder, 'notes', 'deep', 'plan.svg'), 'a sketch')
    symlinkSync('letter.txt', join(folder, 'link'))
    symlinkSync('nowhere', join(folder, 'dangling'))
    publish(folder, plan('one'), name => name === 'plan.svg')
    expect(readdirSync(folder).sort()).toEqual(['dangling', 'letter.txt', 'link', 'notes', 'plan.svg'])
    expect(read('letter.txt')).toBe('dear owner')
    expect(read('notes', 'deep', 'plan.svg')).toBe('a sketch')
    expect(readlinkSync(join(folder, 'link'))).toBe('letter.txt')
    expect(readlinkSync(join(folder, 'dangling'))).toBe('nowhere')
  })

  it('writes through a link into the folder that it leads to', () => {
    const behind = join(place, 'behind')
    mkdirSync(behind)
    symlinkSync('behind', folder)
    publish(folder, plan('one'), none)
    expect(lstatSync(folder).isSymbolicLink()).toBe(true)
    expect(readFileSync(join(behind, 'plan.svg'), 'utf8')).toBe('one')
  })

  it('leaves the old papers as they were where one of the new cannot be written', () => {
    publish(folder, plan('one'), none)
    const files = [...plan('two'), { name: 'missing/plan.pdf', bytes: 'two' }]
    expect(complaintOf(() => publish(folder, files, all))).toMatch(/untouched\.$/)
    expect(read('plan.svg')).toBe('one')
    expect(readdirSync(place)).toEqual(['papers'])
  })

  it('complains of a file where the folder should be, and leaves it alone', () => {
    writeFileSync(folder, 'a letter')
    complaintOf(() => publish(folder, plan('one'), all))
    expect(readFileSync(folder, 'utf8')).toBe('a letter')
    expect(readdirSync(place)).toEqual(['papers'])
  })

  it('adds no handler for each time it is called', () => {
    publish(folder, plan('one'), all)
    const before = process.listenerCount('SIGINT')
    for (let time = 0; time < 12; time++) publish(folder, plan('two'), all)
    expect(process.listenerCount('SIGINT')).toBe(before)
  })
})

describe('the lock', () => {
  it('is taken over from a process that is gone, or that died before it could write its number', () => {
    for (const left of [String(deadPid()), '', 'no number']) {
      writeFileSync(hidden('lock'), left)
      publish(folder, plan(left), all)
      expect(read('plan.svg')).toBe(left)
      expect(readdirSync(place)).toEqual(['papers'])
    }
  })

  it('of a living process is respected: nothing is written, and it stays', () => {
    publish(folder, plan('one'), none)
    writeFileSync(hidden('lock'), String(process.pid))
    expect(complaintOf(() => publish(folder, plan('two'), all))).toMatch(/^another run is writing/)
    expect(read('plan.svg')).toBe('one')
    expect(readFileSync(hidden('lock'), 'utf8')).toBe(String(process.pid))
  })
})

describe('what a killed run left behind', () => {
  it('is put back where it stands under its hidden name', () => {
    publish(folder, [...plan('one'), { name: 'letter.txt', bytes: 'dear owner' }], none)
    renameSync(folder, hidden('old'))
    publish(folder, plan('two'), name => name === 'plan.svg')
    expect(read('plan.svg')).toBe('two')
    expect(read('letter.txt')).toBe('dear owner')
    expect(readdirSync(place)).toEqual(['papers'])
  })

  it('is put back even where the next run fails', () => {
    publish(folder, plan('one'), none)
    renameSync(folder, hidden('old'))
    complaintOf(() => publish(folder, [{ name: 'missing/plan.pdf', bytes: '' }], all))
    expect(read('plan.svg')).toBe('one')
  })

  it('is cleared away where it was never finished, or is older than what stands', () => {
    publish(folder, plan('one'), none)
    for (const what of ['new', 'old']) {
      mkdirSync(hidden(what))
      writeFileSync(join(hidden(what), 'half.svg'), 'half')
    }
    publish(folder, [], none)
    expect(readdirSync(folder)).toEqual(['plan.svg'])
    expect(readdirSync(place)).toEqual(['papers'])
  })
})

const kills = 30
const filesEach = 12

/** A program that publishes generation after generation until it is killed. */
async function publisher(): Promise<string> {
  const script = join(place, 'publisher.mjs')
  await build({
    stdin: {
      contents: `
        import { publish } from './publish.ts'
        const [folder, first] = process.argv.slice(2)
        for (let n = Number(first); ; n++) {
          const bytes = (String(n) + '\\n').repeat(4000)
          const files = Array.from({ length: ${filesEach} }, (_, i) => ({ name: 'paper-' + i, bytes }))
          publish(folder, files, name => name.startsWith('paper-'))
        }`,
      resolveDir: join(import.meta.dirname, '../../src/faces'),
      loader: 'ts',
    },
    outfile: script,
    bundle: true,
    platform: 'node',
    format: 'esm',
  })
  return script
}

/** The one generation that all papers are of; fails where they are mixed, or one is missing or cut off. */
function generation(): number {
  const papers = readdirSync(folder).filter(name => name.startsWith('paper-'))
  expect(papers).toHaveLength(filesEach)
  const texts = new Set(papers.map(name => read(name)))
  expect(texts.size).toBe(1)
  const [text = ''] = texts
  const n = Number(text.slice(0, text.indexOf('\n')))
  expect(text).toBe(`${n}\n`.repeat(4000))
  expect(read('letter.txt')).toBe('dear owner')
  return n
}

/** Waits until the program has published something of its own; then it is in full swing. */
async function begun(first: number, child: ChildProcess): Promise<void> {
  for (;;) {
    if (child.exitCode !== null) throw new Error('the publisher ended by itself')
    try {
      if (Number(read('paper-0').split('\n')[0]) >= first) return
    } catch {
      // Between the two renames the folder is away for an instant.
    }
    await pause(2)
  }
}

/** Moments from 0 to 20 ms, the same in each run (Park and Miller's generator, CACM 31, 1988). */
function* moments(): Generator<number, never> {
  for (let seed = 20261125; ; ) {
    seed = (seed * 48271) % 2147483647
    yield (seed / 2147483647) * 20
  }
}

describe('a kill at any moment', () => {
  it('leaves papers all of one generation, and loses nothing else', async () => {
    const script = await publisher()
    publish(
      folder,
      Array.from({ length: filesEach }, (_, i) => ({ name: `paper-${i}`, bytes: '0\n'.repeat(4000) })),
      none,
    )
    writeFileSync(join(folder, 'letter.txt'), 'dear owner')
    const moment = moments()
    let last = 0
    let halfWay = 0
    for (let kill = 0; kill < kills; kill++) {
      const child = spawn(process.execPath, [script, folder, String(last + 1)], { stdio: 'ignore' })
      const over = once(child, 'exit')
      await begun(last + 1, child)
      await pause(moment.next().value)
      child.kill('SIGKILL')
      await over
      if (existsSync(hidden('lock'))) halfWay++
      const standing = existsSync(folder) ? generation() : undefined
      publish(folder, [], none)
      const now = generation()
      if (standing !== undefined) expect(now).toBe(standing)
      expect(now).toBeGreaterThan(last)
      expect(readdirSync(place).sort()).toEqual(['papers', 'publisher.mjs'])
      last = now
    }
    expect(halfWay, 'kills that fell into the work').toBeGreaterThan(kills / 3)
  }, 120_000)
})
