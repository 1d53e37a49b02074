import { compile } from '../compile.ts'
import { counted, type Finding, inFileOrder } from '../findings/index.ts'
import type { Source } from '../text/index.ts'
import type { Format } from './cli.ts'
import { readEntry } from './read-text.ts'
import { told } from './tell.ts'

/** Judges rig files and tells what is found, on standard output. The exit code is 1 where there is an error. */
export async function check(
  files: readonly string[],
  { format, name }: { readonly format: Format; readonly name: string },
  version: string,
): Promise<number> {
  const sources = new Map<string, Source>()
  const findings: Finding[] = []
  for (const file of files) {
    const entry = readEntry(file, name)
    const compiled = compile(entry.files, entry.read.source, entry.path)
    for (const source of compiled.value.rig.sources) sources.set(source.name, source)
    findings.push(...inFileOrder([...entry.read.findings, ...compiled.findings], compiled.value.rig.sources))
  }
  process.stdout.write(told(findings, [...sources.values()], { format, version, stream: process.stdout }))
  return counted(findings).errors > 0 ? 1 : 0
}
