import { existsSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { counted, type Finding } from '../findings/index.ts'
import { reeve, type TableName, tableNames, tableText } from '../reeve/index.ts'
import type { Source } from '../text/index.ts'
import { Complaint, inWords } from './complaint.ts'
import { standardFiles } from './read-text.ts'
import { told } from './tell.ts'

/** Larger tables than this are some other file. */
const most = 4 * 1024 * 1024

/** Without these there is no rig to write. */
const needed: readonly TableName[] = ['spars', 'sails', 'rails', 'lines']

/**
 * Writes a rig in the language from the tables in a folder, on standard output or into a new file; what is amiss with the
 * tables goes to standard error. The exit code is 1 where something is.
 */
export function reeveFolder(folder: string, into: string | undefined, version: string): number {
  const { sources, findings: unread } = tablesIn(folder)
  if (into !== undefined && existsSync(into))
    throw new Complaint(`${into} is there already; it is left as it is.`)
  const reeved = unread.length > 0 ? { value: '', findings: unread } : reeve(sources, standardFiles)
  const stream = process.stderr
  if (reeved.findings.length > 0)
    stream.write(told(reeved.findings, [...sources.values()], { format: 'plain', version, stream }))
  if (counted(reeved.findings).errors > 0) return 1
  if (into === undefined) process.stdout.write(reeved.value)
  else writeNew(into, reeved.value)
  return 0
}

interface Read {
  readonly sources: ReadonlyMap<TableName, Source>
  /** Of tables that are no text. */
  readonly findings: readonly Finding[]
}

function tablesIn(folder: string): Read {
  const files = tableNames.map(name => ({ name, file: join(folder, `${name}.csv`) }))
  const missing = files.filter(({ name, file }) => needed.includes(name) && !existsSync(file))
  if (missing.length > 0)
    throw new Complaint(`${folder} has no ${missing.map(({ file }) => basename(file)).join(', no ')}.`)
  const tables = files
    .filter(({ file }) => existsSync(file))
    .map(({ name, file }) => ({ name, file, ...tableText(bytesOf(file), file) }))
  return {
    sources: new Map(tables.map(({ name, file, value: text }) => [name, { name: file, text }])),
    findings: tables.flatMap(({ findings }) => findings),
  }
}

function bytesOf(file: string): Uint8Array {
  try {
    const stats = statSync(file)
    if (!stats.isFile()) throw new Complaint(`${file} is no file.`)
    if (stats.size > most) throw new Complaint(`${file} is larger than 4 MB.`)
    return readFileSync(file)
  } catch (error) {
    if (error instanceof Complaint) throw error
    throw new Complaint(`${file} can't be read: ${inWords(error)}.`)
  }
}

/** Written beside its place and put there at one stroke. */
function writeNew(file: string, text: string): void {
  const fresh = join(dirname(file), `.${basename(file)}.new`)
  try {
    writeFileSync(fresh, text)
    renameSync(fresh, file)
  } catch (error) {
    throw new Complaint(`${file} can't be written: ${inWords(error)}.`)
  } finally {
    rmSync(fresh, { force: true })
  }
}
