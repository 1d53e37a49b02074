import { counted } from '../findings/index.ts'
import { type Checked, checkedTexts } from './checked.ts'
import { Complaint } from './complaint.ts'
import type { CheckOptions } from './options.ts'
import { readEntry } from './read-text.ts'
import { told } from './tell.ts'

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

function tell(
  { sources, findings }: Checked,
  stream: NodeJS.WriteStream,
  { format }: CheckOptions,
  version: string,
): number {
  stream.write(told(findings, sources, { format, version, stream }))
  return counted(findings).errors > 0 ? 1 : 0
}
