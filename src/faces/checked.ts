import { compile } from '../compile.ts'
import { type Finding, inFileOrder } from '../findings/index.ts'
import type { Source } from '../text/index.ts'
import type { Entry } from './read-text.ts'

/** The texts that were read, the entries' own and what they bring in, and what is found in them. */
export interface Checked {
  readonly sources: readonly Source[]
  readonly findings: readonly Finding[]
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
