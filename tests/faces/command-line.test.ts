import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { pages } from '../rules/page.ts'
import { builtCli, run } from '../support/built-cli.ts'
import { exampleText } from '../support/compiled.ts'

let cli = ''
let folder = ''
beforeAll(async () => {
  cli = await builtCli()
  folder = mkdtempSync(join(tmpdir(), 'crosstree-'))
}, 60_000)

const put = (name: string, text: string | Uint8Array) => {
  const file = join(folder, name)
  writeFileSync(file, text)
  return file
}

const boat = ['edition 1', 'vessel Tern', '  cutter', ''].join('\n')

describe('help and version', () => {
  it('prints help, and its version', () => {
    const help = run(cli, ['--help'])
    expect(help.code).toBe(0)
    for (const verb of ['check', 'find', 'draw', 'chart', 'book', 'all', 'explain'])
      expect(help.out).toContain(verb)
    const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'))
    expect(run(cli, ['--version'])).toEqual({ code: 0, out: `${version}\n`, err: '' })
  })

  it('answers a wrong call with 2 and how it is called', () => {
    for (const args of [
      [],
      ['rig'],
      ['check'],
      ['check', 'x.rig', '--format', 'xml'],
      ['draw', 'x.rig', '--paper', 'B5'],
    ]) {
      const ran = run(cli, args)
      expect(ran.code, args.join(' ')).toBe(2)
      expect(ran.err).not.toMatch(/\n\s+at /)
    }
  })
})

describe('find', () => {
  const tern = [
    ...['edition 1', 'vessel Tern', 'masts', '  fore mast', 'lines', '  signal halyard single, 8 mm manila'],
    ...[
      '    nicknamed "the monkey"',
      '    hoists signals on fore mast',
      '    answered by the weight of the flag',
    ],
    ...['rails', '  fore rail, 3 pins, marked FR', 'belay on fore rail', '  2 signal halyard', ''],
  ].join('\n')

  it('tells a line by a nickname, as text and as JSON', () => {
    const ran = run(cli, ['find', '-', 'the', 'monkey'], { input: tern })
    expect(ran).toMatchObject({ code: 0, err: '' })
    expect(ran.out).toContain('fore rail, pin 2')
    const json = JSON.parse(run(cli, ['find', '-', '--format', 'json', 'FR 2'], { input: tern }).out)
    expect(json.lines.map(({ name }: { name: string }) => name)).toEqual(['signal halyard'])
  })

  it('answers with 2 and near names where nothing is called so, and with 1 where the text has errors', () => {
    expect(run(cli, ['find', '-', 'capstan'], { input: tern })).toMatchObject({ code: 2, out: '' })
    expect(run(cli, ['find', '-', 'signl halyrdd x'], { input: tern }).err).toMatch(/Nearest: signal halyard/)
    const unsound = run(cli, ['find', '-', 'monkey'], { input: `${tern}masst\n` })
    expect(unsound.code).toBe(1)
    expect(unsound.out).toContain('Signal halyard')
    expect(unsound.err).toContain('masst')
  })
})

describe('check', () => {
  it('finds the example rigs clean, from any folder', () => {
    for (const rig of ['barque-harrow-tansy', 'schooner-pellow-finch']) {
      const ran = run(cli, ['check', join(import.meta.dirname, '../../rigs', `${rig}.rig`)], { cwd: folder })
      expect(ran.code, ran.out).toBe(0)
      expect(ran.out).toMatch(/Clean: no error, no warning/)
      expect(ran.err).toBe('')
    }
  })

  it('reads standard input under a name, and tells places in it', () => {
    const ran = run(cli, ['check', '-', '--name', 'tern.rig'], { input: `${boat}masst\n` })
    expect(ran.code).toBe(1)
    expect(ran.out).toMatch(/^tern\.rig:4:1: error /)
  })

  it('tells findings as JSON with counts, lines and columns from 1', () => {
    const file = put(
      'bad.rig',
      `${boat}rails\n  quarter rail, 3 pins, marked QR\nbelay on quarter rail\n  7  free\n`,
    )
    const ran = run(cli, ['check', file, '--format', 'json'])
    expect(ran.code).toBe(1)
    const { findings, errors, warnings, notes } = JSON.parse(ran.out)
    expect(errors).toBe(1)
    expect(findings.length).toBe(errors + warnings + notes)
    expect(findings).toContainEqual(
      expect.objectContaining({
        rule: 'belay/no-such-pin',
        severity: 'error',
        file,
        line: 7,
        column: 3,
        endLine: 7,
        endColumn: 4,
      }),
    )
  })

  it('tells findings as SARIF 2.1.0 with stable rule ids', () => {
    const log = JSON.parse(run(cli, ['check', '-', '--format', 'sarif'], { input: 'masst\n' }).out)
    expect(log.version).toBe('2.1.0')
    const [{ tool, results }] = log.runs
    expect(tool.driver.name).toBe('crosstree')
    expect(results.length).toBeGreaterThan(0)
    for (const result of results) {
      expect(tool.driver.rules[result.ruleIndex].id).toBe(result.ruleId)
      expect(result.locations[0].physicalLocation.region.startLine).toBeGreaterThanOrEqual(1)
    }
  })

  it('takes names with spaces, and with a leading dash after --', () => {
    put('two words.rig', boat)
    put('-dash.rig', boat)
    expect(run(cli, ['check', 'two words.rig'], { cwd: folder }).code).toBe(0)
    expect(run(cli, ['check', '--', '-dash.rig'], { cwd: folder }).code).toBe(0)
  })

  it('complains of a folder, a missing file and a pipe in one line, with 2', () => {
    const pipe = join(folder, 'pipe.rig')
    spawnSync('mkfifo', [pipe])
    for (const file of [folder, join(folder, 'none.rig'), pipe]) {
      const ran = run(cli, ['check', file])
      expect(ran.code, file).toBe(2)
      expect(ran.err.trim().split('\n')).toHaveLength(1)
      expect(ran.err).toMatch(/^crosstree: /)
    }
  })

  it('answers any text with a finding and 1: empty, binary, half, too large, too long, too deep', () => {
    const texts: Record<string, string | Uint8Array> = {
      empty: '',
      binary: Uint8Array.from({ length: 4096 }, (_, i) => (i * 197 + 13) % 256),
      half: exampleText('schooner-pellow-finch').slice(0, 5000),
      large: `${boat}${'# and so on\n'.repeat(400_000)}`,
      long: `${boat}# ${'x'.repeat(20_000)}\n`,
      deep: Array.from({ length: 100 }, (_, i) => `${'  '.repeat(i)}fore mast`).join('\n'),
    }
    for (const [name, text] of Object.entries(texts)) {
      const ran = run(cli, ['check', put(`${name}.rig`, text)])
      expect(ran.code, `${name}: ${ran.err}`).toBe(1)
      expect(ran.out, name).toMatch(/:\d+:\d+: error /)
      expect(ran.err, name).toBe('')
    }
  }, 120_000)

  it('brings in texts of its folder, and no others', () => {
    mkdirSync(join(folder, 'gear'), { recursive: true })
    put('gear/own.rig', 'edition 1\n')
    put('outside.rig', 'edition 1\n')
    mkdirSync(join(folder, 'in'), { recursive: true })
    symlinkSync(join(folder, 'outside.rig'), join(folder, 'in/link.rig'))
    const rules = (text: string, at = 'in/entry.rig') => {
      const ran = run(cli, ['check', put(at, `${boat}${text}\n`), '--format', 'json'])
      return JSON.parse(ran.out).findings.map((one: { rule: string }) => one.rule)
    }
    expect(rules('bring in "gear/own.rig"', 'entry.rig')).toEqual([])
    expect(rules('bring in "../outside.rig"')).toEqual(['file/outside'])
    expect(rules('bring in "/etc/passwd"')).toEqual(['file/outside'])
    expect(rules('bring in "link.rig"')).toEqual(['file/refused'])
    expect(rules('bring in "none.rig"')).toEqual(['file/missing'])
    expect(rules('bring in "entry.rig"')).toEqual(['file/loop'])
    expect(rules('bring in "gear/own.rig"\nbring in "gear/own.rig"', 'entry.rig')).toEqual(['file/twice'])
  }, 60_000)

  it('is no fault of its own when the reader goes away', () => {
    const ran = spawnSync('sh', ['-c', `"${process.execPath}" "${cli}" explain | head -n 1`], {
      encoding: 'utf8',
    })
    expect(ran.status).toBe(0)
    expect(ran.stderr).toBe('')
  })

  it.runIf(existsSync('/dev/full'))('tells of a full disk behind the output, with 2', () => {
    const ran = spawnSync('sh', ['-c', `"${process.execPath}" "${cli}" explain > /dev/full`], {
      encoding: 'utf8',
    })
    expect(ran.status).toBe(2)
    expect(ran.stderr).toBe("crosstree: the output can't be written: the disk is full.\n")
  })
})

describe('explain', () => {
  it('lists all rules, one a line, slug first', () => {
    const lines = run(cli, ['explain']).out.trimEnd().split('\n')
    expect(lines.length).toBeGreaterThan(30)
    for (const line of lines) expect(line).toMatch(/^[a-z]+\/[a-z0-9-]+ {2,}\S/)
    const slugs = lines.map(line => line.replace(/ .*/, ''))
    expect(slugs).toEqual(pages.map(page => page.name))
    expect(slugs).toContain('sheet/name-cut')
  })

  it('lists the rules of a group', () => {
    const lines = run(cli, ['explain', 'mast']).out.trimEnd().split('\n')
    expect(lines.length).toBeGreaterThan(2)
    for (const line of lines) expect(line).toMatch(/^mast\//)
  })

  it('prints the page of a rule, and offers the nearest to an unknown one', () => {
    expect(run(cli, ['explain', 'belay/two-on-a-pin']).out).toMatch(/^# /)
    const unknown = run(cli, ['explain', 'belay/two-on-pin'])
    expect(unknown.code).toBe(2)
    expect(unknown.err).toContain('belay/two-on-a-pin')
  })
})
