import { fair } from '../fair/index.ts'
import type { Finding } from '../findings/index.ts'
import type { Source } from '../text/index.ts'
import type { FairOptions } from './options.ts'
import { readEntry } from './read-text.ts'
import { rewrite } from './rewrite.ts'
import { told } from './tell.ts'

/**
 * Sets rig files fair in place, each at one stroke; standard input goes to standard output. With `check` nothing is
 * written. The exit code is 1 where a text can't be read soundly, or with `check` is not fair. What is wrong with an
 * unsound text is told on standard error, and the text stays as it is.
 */
export function setFair(files: readonly string[], { check, name }: FairOptions, version: string): number {
  const settings = [...new Set(files)].map(file => settingOf(file, name))
  const unsound = settings.filter(({ faults }) => faults.length > 0)
  if (unsound.length > 0) tell(unsound, version)
  const changed = settings.filter(({ source, text }) => text !== source.text)
  if (check) return unsound.length + changed.length > 0 ? 1 : 0
  rewrite(
    changed
      .filter(({ isInput }) => !isInput)
      .map(({ source, text }) => ({ file: source.name, before: source.text, after: text })),
  )
  for (const { isInput, text } of settings) if (isInput) process.stdout.write(text)
  return unsound.length > 0 ? 1 : 0
}

/** A text as it was read, and as it is when set fair: unchanged where it has faults. */
interface Setting {
  readonly isInput: boolean
  readonly source: Source
  readonly text: string
  readonly faults: readonly Finding[]
}

function settingOf(file: string, nameOfInput: string): Setting {
  const { source, findings } = readEntry(file, nameOfInput).read
  const isInput = file === '-'
  if (findings.length > 0) return { isInput, source, text: source.text, faults: findings }
  const { value: text, findings: faults } = fair(source)
  return { isInput, source, text, faults }
}

function tell(unsound: readonly Setting[], version: string): void {
  const faults = unsound.flatMap(one => one.faults)
  const sources = unsound.map(({ source }) => source)
  process.stderr.write(told(faults, sources, { format: 'plain', version, stream: process.stderr }))
  for (const { name } of sources)
    process.stderr.write(`${name} is left as it is: it can't be read soundly.\n`)
}
