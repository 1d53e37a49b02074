import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { optimiseLater } from '../../src/faces/optimise-later.ts'
import { textMarks } from '../../src/press/text-marks.ts'
import { paperMakers } from '../../src/sheets/papers.ts'
import { compiledRig } from '../support/compiled.ts'
import { fleet } from '../support/fleet.ts'
import { installedFonts } from '../support/fonts.ts'
import { bundleStages, stagesOf } from './bundled.ts'
import { longRig } from './long-text.ts'
import { bareRatio, median, milliseconds, slopeOf, timed, worked } from './measure.ts'
import { reckoningRows } from './reckoning.ts'

const root = join(import.meta.dirname, '../..')
const cli = join(root, 'dist', 'cli.cjs')
const barque = join(root, 'rigs', 'barque-harrow-tansy.rig')
const say = (...cells: readonly string[]) => process.stdout.write(`| ${cells.join(' | ')} |\n`)

if (!existsSync(cli)) throw new Error('dist/cli.cjs is missing: run "npm run build" first.')

const bundle = await bundleStages()
const { compile, foulsOf, reckon, reckoningRecord } = stagesOf(bundle)

say('what', 'figure', 'wanted')
say('---', '---', '---')
startUp()
warm()
await wholeProcess()
growth()
fouls()
for (const row of reckoningRows({ reckon, reckoningRecord })) say(...row)

/** A command run to its end, in milliseconds; a run that fails measures nothing. */
function processTime(args: readonly string[]): number {
  return timed(() => {
    const { status } = spawnSync(process.execPath, args, { stdio: 'ignore', cwd: root })
    if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}`)
  })
}

/** What `check` costs on a cold start, beside a process that does nothing, the two in turn. */
function startUp(): void {
  const { bare, ours, ratio } = bareRatio(
    15,
    () => processTime(['-e', '0']),
    () => processTime([cli, 'check', barque]),
  )
  say('bare Node process', milliseconds(bare), '')
  say('`check` of the barque, whole process', milliseconds(ours), '')
  say('the same as a multiple of bare Node', ratio.toFixed(1), '3')
  const parts = Array.from({ length: 12 }, coldParts).slice(1)
  const middle = (part: keyof ColdParts) => milliseconds(median(parts.map(one => one[part])))
  say('of it: loading the compiler', middle('load'), '')
  say('of it: making the parser', middle('grammar'), '')
  say('of it: the work, a cold compile', middle('first'), '')
  say('a second compile in the same process', middle('second'), '')
}

type ColdParts = Readonly<Record<'load' | 'grammar' | 'first' | 'second', number>>

/** What the parts of a cold check cost, in a process of its own; the first such process keeps what V8 made of the code. */
function coldParts(): ColdParts {
  const script = join(import.meta.dirname, 'cold.mjs')
  const options = [optimiseLater(process.versions.v8) ?? []].flat()
  const { stdout } = spawnSync(process.execPath, [...options, script, bundle, barque], { encoding: 'utf8' })
  return JSON.parse(stdout) as ColdParts
}

/** Lines a second of processor time, once the process is warm: a process that does nothing else. */
function warm(): void {
  const script = join(import.meta.dirname, 'warm.mjs')
  const { stdout } = spawnSync(process.execPath, [script, bundle, barque], { encoding: 'utf8' })
  const { lines, parsing, building, compiling }: WarmPaces = JSON.parse(stdout)
  const pace = (linesPerSecond: number) => `${Math.round(linesPerSecond / 1000)},000 lines/s`
  say(`parsing the barque and her gear, ${lines} lines, warm`, pace(parsing), '')
  say('parsing and building her, warm', pace(building), '60,000 lines/s')
  say('compiling her whole, with orders and rules, warm', pace(compiling), '')
}

type WarmPaces = Readonly<Record<'lines' | 'parsing' | 'building' | 'compiling', number>>

/** What all papers cost, beside pdfkit alone with as many documents, pages and texts, the two in turn. */
async function wholeProcess(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'crosstree-'))
  const script = join(import.meta.dirname, 'bare-papers.mjs')
  const counts = (await countedPapers()).map(String)
  const { bare, ours, ratio } = bareRatio(
    3,
    () => processTime([script, folder, ...counts]),
    () => processTime([cli, 'all', barque, '--into', join(folder, 'papers')]),
  )
  say(`bare pdfkit, ${counts.join(' / ')} documents / pages / texts`, milliseconds(bare), '')
  say('`all` papers of the barque, whole process', milliseconds(ours), '6,000 ms')
  say('the same as a multiple of bare pdfkit', ratio.toFixed(1), '')
}

/** How many documents, pages and texts the papers of the barque are. */
async function countedPapers(): Promise<readonly number[]> {
  const { ruler, covers } = await installedFonts()
  const imprint = { digest: '7Q4K-9MTX', from: 'barque-harrow-tansy.rig', errors: 0 }
  const drawn = compiledRig('barque-harrow-tansy').value
  const kinds = new Set(['sail plan', 'pin charts', 'handbooks'] as const)
  const makers = paperMakers(drawn, { ruler, covers, imprint, paper: 'A4' }, kinds)
  const documents = makers.flatMap(make => make().value.map(({ document }) => document))
  const pages = documents.flatMap(document => document.pages)
  return [documents.length, pages.length, pages.flatMap(page => [...textMarks(page.marks)]).length]
}

/** How the cost of a check grows with the text: a slope of 1 is linear. */
function growth(): void {
  const points = [100, 300, 1_000, 3_000, 10_000, 20_000, 50_000, 100_000].map(lines => {
    const { files, entry, lines: length } = longRig(lines)
    const rounds = lines > 3_000 ? 1 : 5
    const check = () => compile(files, entry)
    if (lines <= 3_000) check()
    const time = median(Array.from({ length: rounds }, () => worked(check)))
    say(
      `checking ${length} lines`,
      `${milliseconds(time)}, ${((time / length) * 1000).toFixed(0)} µs a line`,
      '',
    )
    return { x: length, y: time }
  })
  say('slope of time over lines, both as logarithms', slopeOf(points).toFixed(2), '1, linear')
  const [, , ...long] = points
  say('the same from 1,000 lines up', slopeOf(long).toFixed(2), '1, linear')
}

/** How the search for fouls grows with the lines: barques moored side by side. */
function fouls(): void {
  const { rig } = compiledRig('barque-harrow-tansy').value
  const points = [1, 2, 4, 8, 16, 32].map(count => {
    const many = fleet(rig, count)
    for (let i = 0; i < 5; i++) foulsOf(many)
    const time = median(Array.from({ length: 7 }, () => worked(() => foulsOf(many))))
    return { x: many.lines.length, y: time }
  })
  say(
    `finding fouls among ${points[0]?.x} / ${points.at(-1)?.x} lines, warm`,
    points
      .map(({ y }) => milliseconds(y))
      .filter((_, i) => i === 0 || i === points.length - 1)
      .join(' / '),
    '',
  )
  say('slope of that time over lines, both as logarithms', slopeOf(points).toFixed(2), '1, linear')
}
