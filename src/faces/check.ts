import { compile } from '../compile.ts'
import { counted, type Finding, inFileOrder } from '../findings/index.ts'
import type { Source } from '../text/index.ts'
import type { CheckOptions } from './cli.ts'
import { Complaint } from './complaint.ts'
import { type Entry, readEntry } from './read-text.ts'
import { told } from './tell.ts'

/** The texts that were read, the entries' own and what they bring in, and what is found in them. */
export interface Checked {
  readonly sources: readonly Source[]
  readonly findings: readonly Finding[]
}

/**
 * Judges rig files and tells what is found, on standard output. With `fix` it shows there what can be mended surely,
 * as a change, and tells the findings on standard error; with `write` it makes the change and tells what is left.
 * The exit code is 1 where there is an error.
 */
export async function check(
  files: readonly string[],
  options: CheckOptions,
  version: string,
): Promise<number> {
  if (options.write && !options.fix) throw new Complaint('--write goes with --fix.')
  if (options.write && files.includes('-')) throw new Complaint("standard input can't be written back.")
  const entries = files.map(file => readEntry(file, options.name))
  const checked = checkedTexts(entries)
  if (!options.fix) return tell(checked, process.stdout, options, version)
  const { showFixes, writeFixes } = await import('./fix.ts')
  if (options.write) return tell(writeFixes(entries, checked), process.stdout, options, version)
  showFixes(checked)
  return tell(checked, process.stderr, options, version)
}

/** What is found in the texts of some entries, in the order of the entries and of each one's texts. */
export function checkedTexts(entries: readonly Entry[]): Checked {
  const all = entries.map(({ read, files, path }) => {
    const compiled = compile(files, read.source, path)
    const { sources } = compiled.value.rig
    return { sources, findings: inFileOrder([...read.findings, ...compiled.findings], sources) }
  })
  const sources = new Map(all.flatMap(one => one.sources.map(source => [source.name, source])))
  return { sources: [...sources.values()], findings: all.flatMap(one => one.findings) }
}

function tell(
  { sources, findings }: Checked,
  stream: NodeJS.WriteStream,
  { format }: CheckOptions,
  version: string,
): number {
  stream.write(told(findings, sources, { format, version, stream }))
  return counted(findings).errors > 0 ? 1 : 0
}
