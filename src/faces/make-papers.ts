import { type Compiled, compile } from '../compile.ts'
import { evolve } from '../evolve/index.ts'
import { counted, type Found, inFileOrder } from '../findings/index.ts'
import { several } from '../press/findings/index.ts'
import { inLanguage, withNicknames } from '../rig/index.ts'
import type { PaperKind } from '../sheets/papers.ts'
import { Complaint } from './complaint.ts'
import { digestOf } from './digest.ts'
import type { PaperOptions } from './options.ts'
import { terminalProgress } from './progress.ts'
import { readEntry } from './read-text.ts'
import { told } from './tell.ts'
import { defaultFolder, openPresses, type Presses, writePapers } from './write-papers.ts'

/** Compiles rig files into papers of these kinds. The exit code is 1 where a text has errors. */
export async function makePapers(
  files: readonly string[],
  kinds: ReadonlySet<PaperKind>,
  options: PaperOptions,
  version: string,
): Promise<number> {
  if (options.into !== undefined && files.length > 1) {
    throw new Complaint('--into takes the papers of one rig; give the files one by one.')
  }
  const presses = await openPresses(kinds)
  try {
    const codes: number[] = []
    for (const file of files) codes.push(await makeOne(file, kinds, options, presses, version))
    return Math.max(...codes)
  } finally {
    presses.second?.close()
  }
}

async function makeOne(
  file: string,
  kinds: ReadonlySet<PaperKind>,
  options: PaperOptions,
  presses: Presses,
  version: string,
): Promise<number> {
  const entry = readEntry(file, options.name)
  const compiled = compile(entry.files, entry.read.source, entry.path)
  const spoken = inLanguageAsked(compiled.value, options.language)
  const rig = options.nicknames ? withNicknames(spoken.value.rig) : spoken.value.rig
  const before = [...entry.read.findings, ...compiled.findings, ...spoken.findings]
  const { errors } = counted(before)
  const stream = options.format === 'plain' ? process.stderr : process.stdout
  const tell = (findings: typeof before) =>
    stream.write(
      told(inFileOrder(findings, rig.sources), rig.sources, { format: options.format, version, stream }),
    )
  if (errors > 0 && !options.unsound) {
    tell(before)
    process.stderr.write(
      `${entry.read.source.name}: no papers are written from a rig with ${several(errors, 'error')}; --unsound writes them, marked so.\n`,
    )
    return 1
  }
  const progress = terminalProgress(process.stderr)
  const { style = 'fine' } = options
  const usual = `${defaultFolder(entry.stem)}${style === 'fine' ? '' : `-${style}`}`
  const folder = `${options.into ?? usual}${errors > 0 ? '-unsound' : ''}`
  const imprint = { digest: digestOf(rig.sources), from: `${entry.stem}.rig`, errors }
  const written = await writePapers(
    { ...spoken.value, rig },
    { kinds, paper: options.paper, style, folder, imprint },
    presses,
    progress.show,
  )
  progress.clear()
  tell([...before, ...written.findings])
  process.stderr.write(`${several(written.names.length, 'paper')} written into ${folder}\n`)
  return errors > 0 ? 1 : 0
}

/** What was compiled, with its names and orders in the language asked for. */
function inLanguageAsked(compiled: Compiled, language: string | undefined): Found<Compiled> {
  if (language === undefined) return { value: compiled, findings: [] }
  const spoken = inLanguage(compiled.rig, language)
  if (!spoken) {
    const known = [...compiled.rig.tongues.values()].map(tongue => tongue.language)
    const has =
      known.length > 0 ? `It has ${known.join(', ')}.` : 'It has labels and glossaries in no other language.'
    throw new Complaint(`The rig says nothing in ${language}. ${has}`)
  }
  const { value: rig, findings } = spoken
  return { value: { ...compiled, rig, evolutions: evolve(rig) }, findings }
}
