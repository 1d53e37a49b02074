import { findLines, nearNames } from '../assist/index.ts'
import { readRig } from '../compile.ts'
import { inFileOrder } from '../findings/index.ts'
import { jsonFigures } from '../press/figures/index.ts'
import { plainTables } from '../press/table/index.ts'
import { foundRecord, foundTables } from '../sheets/found/index.ts'
import { Complaint } from './complaint.ts'
import { readEntry } from './read-text.ts'
import { told } from './tell.ts'

/** How what is found is told. */
export interface FindOptions {
  readonly format: 'plain' | 'json'
  readonly name: string
}

/**
 * Tells on standard output of the lines that words call: where each is made fast, what it does, and what is eased with it.
 * The exit code is 1 where the text has errors; that nothing is called so is a wrong call.
 */
export function find(file: string, words: readonly string[], options: FindOptions, version: string): number {
  const entry = readEntry(file, options.name)
  const { value: rig, findings } = readRig(entry.files, entry.read.source, entry.path)
  const asked = words.join(' ')
  const found = findLines(rig, asked)
  if (found.lines.length + found.free.length === 0) {
    const near = nearNames(rig, asked)
    const offer = near.length > 0 ? ` Nearest: ${near.join(', ')}.` : ''
    throw new Complaint(`${entry.read.source.name} has no line called "${asked}".${offer}`)
  }
  process.stdout.write(
    options.format === 'json'
      ? jsonFigures(foundRecord(rig, asked, found))
      : plainTables(foundTables(rig, found)),
  )
  const errors = [...entry.read.findings, ...findings].filter(({ severity }) => severity === 'error')
  if (errors.length === 0) return 0
  const shown = { format: 'plain', version, stream: process.stderr } as const
  process.stderr.write(told(inFileOrder(errors, rig.sources), rig.sources, shown))
  return 1
}
