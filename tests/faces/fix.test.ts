import {
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
import { applyPatch } from 'diff'
import { beforeAll, describe, expect, it } from 'vitest'
import { Complaint } from '../../src/faces/complaint.ts'
import { rewrite } from '../../src/faces/rewrite.ts'
import { builtCli, run } from '../support/built-cli.ts'

let cli = ''
let folder = ''
beforeAll(async () => {
  cli = await builtCli()
  folder = mkdtempSync(join(tmpdir(), 'crosstree-'))
}, 60_000)

const put = (name: string, text: string | Uint8Array) => {
  writeFileSync(join(folder, name), text)
  return name
}
const textOf = (name: string) => readFileSync(join(folder, name), 'utf8')
const check = (...args: readonly string[]) => run(cli, ['check', ...args], { cwd: folder })

const crooked = 'edition 1\nvessel Tern\n  cutter\n\nstays   # all\n  fore stay\n   jib stay  # crooked\n'
const straight = crooked.replace('   jib stay', '  jib stay')

describe('check --fix', () => {
  it('shows the change on standard output, the findings on standard error, and touches nothing', () => {
    const ran = check('--fix', put('show.rig', crooked))
    expect(ran.code).toBe(0)
    expect(applyPatch(crooked, ran.out)).toBe(straight)
    expect(ran.out).toMatch(/^--- show\.rig\n\+\+\+ show\.rig\n/)
    expect(ran.err).toMatch(
      /^show\.rig:7:4: note syntax\/margin: .*\n.*\n {4}Fix: Set the line in by 2 spaces/,
    )
    expect(textOf('show.rig')).toBe(crooked)
  })

  it('shows nothing where nothing can be mended surely', () =>
    expect(check('--fix', put('sound.rig', straight)).out).toBe(''))

  it('shows the change of standard input', () => {
    const ran = run(cli, ['check', '--fix', '-', '--name', 'tern.rig'], { input: crooked })
    expect(applyPatch(crooked, ran.out)).toBe(straight)
  })

  it('carries fixes in SARIF and JSON', () => {
    const file = put('forms.rig', crooked)
    const log = JSON.parse(check('--format', 'sarif', file).out)
    expect(log.runs[0].results[0].fixes).toEqual([
      {
        description: { text: 'Set the line in by 2 spaces' },
        artifactChanges: [
          {
            artifactLocation: { uri: file },
            replacements: [
              {
                deletedRegion: { startLine: 7, startColumn: 1, endLine: 7, endColumn: 4 },
                insertedContent: { text: '  ' },
              },
            ],
          },
        ],
      },
    ])
    expect(JSON.parse(check('--format', 'json', file).out).findings[0].fix).toEqual({
      title: 'Set the line in by 2 spaces',
      edits: [{ file, line: 7, column: 1, endLine: 7, endColumn: 4, text: '  ' }],
    })
  })
})

describe('check --fix --write', () => {
  it('makes the change, and tells what is found then', () => {
    const ran = check('--fix', '--write', put('write.rig', crooked))
    expect(ran).toEqual({
      code: 0,
      out: 'Clean: no error, no warning.\n',
      err: '1 mend made in write.rig.\n',
    })
    expect(textOf('write.rig')).toBe(straight)
    expect(readdirSync(folder).filter(name => name.startsWith('.'))).toEqual([])
  })

  it('mends a text that is brought in, and leaves the standard gear as it is', () => {
    put('part.rig', 'stays\n  fore stay\n   jib stay\n')
    const ran = check(
      '--fix',
      '--write',
      put('whole.rig', 'bring in standard gear\nbring in "part.rig"\nvessel Tern\n'),
    )
    expect(ran.err).toBe('1 mend made in part.rig.\n')
    expect(textOf('part.rig')).toBe('stays\n  fore stay\n  jib stay\n')
  })

  it('keeps the encoding, the line ends, the mode and the link', () => {
    const wide = Buffer.from(`\ufeff${crooked.replaceAll('\n', '\r\n')}`, 'utf16le')
    put('wide.rig', wide)
    writeFileSync(join(folder, 'wide.rig'), wide, { mode: 0o640 })
    const { mode } = statSync(join(folder, 'wide.rig'))
    symlinkSync('wide.rig', join(folder, 'link.rig'))
    expect(check('--fix', '--write', 'link.rig').code).toBe(0)
    expect(lstatSync(join(folder, 'link.rig')).isSymbolicLink()).toBe(true)
    expect(readFileSync(join(folder, 'wide.rig')).toString('utf16le')).toBe(
      `\ufeff${straight.replaceAll('\n', '\r\n')}`,
    )
    expect(statSync(join(folder, 'wide.rig')).mode).toBe(mode)
  })

  it('says so where nothing can be mended surely', () => {
    const ran = check('--fix', '--write', put('nothing.rig', straight))
    expect(ran.code).toBe(0)
    expect(ran.err).toBe('nothing can be mended surely; the text is left as it is.\n')
  })

  it('is a wrong call without --fix, and on standard input', () => {
    expect(check('--write', put('call.rig', crooked)).code).toBe(2)
    expect(run(cli, ['check', '--fix', '--write', '-'], { input: crooked }).code).toBe(2)
    expect(textOf('call.rig')).toBe(crooked)
  })

  it('refuses broken UTF-8, which could not be written back', () => {
    const bytes = Buffer.concat([Buffer.from(crooked), Buffer.from([0x23, 0xff, 0x0a])])
    const ran = check('--fix', '--write', put('broken.rig', bytes))
    expect(ran.code).toBe(2)
    expect(ran.err).toMatch(/no sound UTF-8/)
    expect(readFileSync(join(folder, 'broken.rig')).equals(bytes)).toBe(true)
  })
})

describe('rewriting', () => {
  it('refuses a file that has changed since, and then touches none', () => {
    const [first, second] = [put('first.rig', 'one'), put('second.rig', 'changed')].map(name =>
      join(folder, name),
    )
    const changes = [first, second].map((file = '') => ({ file, before: 'one', after: 'two' }))
    expect(() => rewrite(changes)).toThrow(Complaint)
    expect([textOf('first.rig'), textOf('second.rig')]).toEqual(['one', 'changed'])
    expect(readdirSync(folder).filter(name => name.startsWith('.'))).toEqual([])
  })
})
