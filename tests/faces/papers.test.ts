import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { builtCli, type RunOptions, run } from '../support/built-cli.ts'
import { readPdf } from '../support/pdf.ts'

// Papers take seconds, and on a machine with much else to do far longer; a slow run is no fault.
const patience = 400_000

const schooner = join(import.meta.dirname, '../../rigs/schooner-pellow-finch.rig')

/** A boat small enough to be drawn in an instant, with one paper of every kind. */
const boat = `edition 1
bring in standard gear

vessel Tern
  cutter
  waterline 8.00 m, between perpendiculars 8.00 m
  revision "A" 1 March 2027

masts
  main mast, stepped 3.00 m aft 0.80 m up
    lower mast to 11.00 m up

stays
  fore stay from 3.10 m aft 9.50 m up to 0.20 m aft 1.40 m up

sails
  jib, headsail on fore stay
    tack 0.40 m aft 1.70 m up, head 2.80 m aft 8.60 m up, clew 2.90 m aft 1.90 m up
    gear jib
      fairlead at 3.60 m aft 1.20 m out 1.10 m up

rails
  side rail, port and starboard, marked SR
    3 pins from 3.00 m aft 1.30 m out to 3.60 m aft 1.30 m out, 1.20 m up

belay on side rail
  1  port jib halyard, starboard jib downhaul
  2  jib sheet
  3  free

stations
  deck, 2 hands in a watch, 2 in all
    works side rail
`
const unsound = `${boat}masst\n`

let cli = ''
let place = ''
beforeAll(async () => {
  cli = await builtCli()
  place = mkdtempSync(join(tmpdir(), 'crosstree-'))
}, patience)

/** A folder of its own for each case, with the boat's text in it. */
function berth(name: string, text = boat): { readonly rig: string; readonly into: string } {
  const folder = join(place, name)
  mkdirSync(folder)
  writeFileSync(join(folder, 'tern.rig'), text)
  return { rig: join(folder, 'tern.rig'), into: join(folder, 'papers') }
}

/** Runs the command, which must end with this code, and hands back what it told. */
function told(code: number, args: readonly string[], options: RunOptions = {}): string {
  const ran = run(cli, args, options)
  expect(ran.code, ran.err).toBe(code)
  expect(ran.err).not.toMatch(/\n\s+at /)
  return ran.err
}

const bytesOf = (folder: string) =>
  new Map(
    readdirSync(folder)
      .sort()
      .map(name => [name, readFileSync(join(folder, name)).toString('base64')]),
  )

/** The size of a PDF's first page in whole millimetres, the shorter side first: a plate may lie or stand. */
async function sizeOf(file: string): Promise<readonly number[]> {
  const page = await (await readPdf(readFileSync(file))).getPage(1)
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view
  return [right - left, top - bottom].map(points => Math.round((points / 72) * 25.4)).sort((a, b) => a - b)
}

describe('all papers of the schooner', () => {
  const rails = ['BR', 'HS', 'FR', 'FF', 'MR', 'MF', 'RB', 'QR'].flatMap(code => [`${code}-P`, `${code}-S`])
  const sheets = [...rails, 'FF-A', 'FSH', 'MB'].flatMap(code => [`rail-${code}`, `rail-${code}-blank`])
  const stations = ['forecastle', 'foremast', 'mainmast', 'quarter']
  const names = [
    ...['sail-plan', 'pin-chart', ...sheets].flatMap(sheet => [`${sheet}.svg`, `${sheet}.pdf`]),
    ...stations.flatMap(station => [`handbook-${station}.pdf`, `handbook-${station}-booklet.pdf`]),
  ].sort()

  it(
    'are these and no others, and the same bytes in another place, language and time zone',
    () => {
      const [here, there] = [join(place, 'here'), join(place, 'there')]
      const first = { TZ: 'Pacific/Kiritimati', LANG: 'C', LC_ALL: 'C' }
      const second = { TZ: 'America/St_Johns', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' }
      told(0, ['all', schooner, '--into', here], { env: first })
      expect(readdirSync(here).sort()).toEqual(names)
      told(0, ['all', schooner, '--into', 'there'], { env: second, cwd: place })
      const [one, other] = [bytesOf(here), bytesOf(there)]
      expect([...other.keys()]).toEqual(names)
      expect(names.filter(name => one.get(name) !== other.get(name))).toEqual([])
    },
    patience,
  )
})

describe('papers of one kind', () => {
  it(
    'are those that a second thread helps to press with all the others',
    () => {
      const { rig, into } = berth('kinds')
      told(0, ['all', rig, '--into', into])
      const apart = join(into, '..', 'apart')
      for (const verb of ['draw', 'chart', 'book']) told(0, [verb, rig, '--into', apart])
      const all = bytesOf(into)
      expect(all.size).toBeGreaterThan(8)
      expect(bytesOf(apart)).toEqual(all)
    },
    patience,
  )
})

describe('a rig with an error', () => {
  it(
    'writes nothing, and leaves earlier papers as they were',
    () => {
      const { rig, into } = berth('error')
      writeFileSync(rig, unsound)
      expect(told(1, ['draw', rig, '--into', into])).toMatch(/no papers are written from a rig with 1 error/)
      expect(existsSync(into)).toBe(false)
      writeFileSync(rig, boat)
      told(0, ['draw', rig, '--into', into])
      const before = bytesOf(into)
      writeFileSync(rig, unsound)
      told(1, ['draw', rig, '--into', into])
      expect(bytesOf(into)).toEqual(before)
      expect(readdirSync(join(into, '..')).sort()).toEqual(['papers', 'tern.rig'])
    },
    patience,
  )

  it(
    'is drawn unsound when told so, beside the sound papers, marked, and without a digest',
    async () => {
      const { rig, into } = berth('unsound')
      told(0, ['draw', rig, '--into', into])
      const sound = readFileSync(join(into, 'sail-plan.svg'), 'utf8')
      const [, digest = 'no digest'] = />Digest ([0-9A-Z]{4}-[0-9A-Z]{4})</.exec(sound) ?? []
      expect(digest).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/)
      writeFileSync(rig, unsound)
      told(1, ['draw', rig, '--into', into, '--unsound'])
      expect(readFileSync(join(into, 'sail-plan.svg'), 'utf8')).toBe(sound)
      const marked = readFileSync(join(`${into}-unsound`, 'sail-plan.svg'), 'utf8')
      expect(marked).toContain('from a rig with 1 error')
      expect(marked).toContain('no digest: the rig has errors')
      expect(marked).not.toContain('digest-mark')
      expect(marked).not.toMatch(/>[^<]*[0-9A-HJKMNP-TV-Z]{4}[- ][0-9A-HJKMNP-TV-Z]{4}</)
      expect(sound).not.toContain('from a rig with')
    },
    patience,
  )
})

describe('paper', () => {
  it(
    'is A3 and A4, or Tabloid and Letter',
    async () => {
      const { rig, into } = berth('paper')
      const wanted = {
        A4: { plate: [297, 420], strip: [210, 297], side: [210, 297] },
        Letter: { plate: [279, 432], strip: [216, 279], side: [216, 279] },
      }
      for (const [paper, { plate, strip, side }] of Object.entries(wanted)) {
        told(0, ['all', rig, '--into', into, '--paper', paper])
        expect(await sizeOf(join(into, 'sail-plan.pdf')), paper).toEqual(plate)
        expect(await sizeOf(join(into, 'pin-chart.pdf')), paper).toEqual(plate)
        expect(await sizeOf(join(into, 'rail-SR-P.pdf')), paper).toEqual(strip)
        expect(await sizeOf(join(into, 'handbook-deck-booklet.pdf')), paper).toEqual(side)
      }
    },
    patience,
  )
})

describe('the folder of the papers', () => {
  it(
    'keeps what a run does not make again, and loses the strips of a rail that is gone',
    () => {
      const { rig, into } = berth('kept')
      mkdirSync(into)
      const others = ['letter.txt', 'handbook-deck.pdf', 'rail-ZZ.svg', 'pin-chart.pdf']
      for (const name of [...others, 'sail-plan.pdf']) writeFileSync(join(into, name), `an older ${name}`)
      told(0, ['draw', rig, '--into', into])
      expect(readdirSync(into).sort()).toEqual([...others, 'sail-plan.pdf', 'sail-plan.svg'].sort())
      for (const name of others) expect(readFileSync(join(into, name), 'utf8')).toBe(`an older ${name}`)
      expect(readFileSync(join(into, 'sail-plan.pdf'), 'latin1')).toMatch(/^%PDF-1\./)
      told(0, ['chart', rig, '--into', into])
      const names = readdirSync(into)
      expect(names).not.toContain('rail-ZZ.svg')
      expect(names).toContain('rail-SR-P-blank.svg')
      expect(names).toContain('letter.txt')
      expect(names).toContain('handbook-deck.pdf')
    },
    patience,
  )

  it(
    'is out/<rig> in the working folder unless another is named',
    () => {
      const { rig } = berth('default')
      const cwd = join(rig, '..')
      told(0, ['draw', 'tern.rig'], { cwd })
      expect(readdirSync(join(cwd, 'out', 'tern')).sort()).toEqual(['sail-plan.pdf', 'sail-plan.svg'])
    },
    patience,
  )

  it(
    'that cannot be written is complained of in one line, with 2',
    () => {
      const { rig, into } = berth('file')
      writeFileSync(into, 'a letter')
      for (const target of [into, join(into, 'within')]) {
        const complaint = told(2, ['draw', rig, '--into', target])
        expect(complaint.trim().split('\n').at(-1)).toMatch(/^crosstree: .* can't be written: /)
      }
      expect(readFileSync(into, 'utf8')).toBe('a letter')
      expect(readdirSync(join(into, '..')).sort()).toEqual(['papers', 'tern.rig'])
    },
    patience,
  )

  it(
    'takes the papers of one rig only',
    () => {
      const { rig, into } = berth('several')
      expect(told(2, ['draw', rig, schooner, '--into', into])).toMatch(
        /^crosstree: --into takes the papers of one rig/,
      )
      expect(existsSync(into)).toBe(false)
    },
    patience,
  )
})
