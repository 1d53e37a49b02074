import { existsSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { counted } from '../findings/index.ts'
import { reeve, type TableName, tableNames } from '../reeve/index.ts'
import { decode, type Source } from '../text/index.ts'
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
  const sources = tablesIn(folder)
  if (into !== undefined && existsSync(into))
    throw new Complaint(`${into} is there already; it is left as it is.`)
  const { value: text, findings } = reeve(sources, standardFiles)
  const stream = process.stderr
  if (findings.length > 0)
    stream.write(told(findings, [...sources.values()], { format: 'plain', version, stream }))
  if (counted(findings).errors > 0) return 1
  if (into === undefined) process.stdout.write(text)
  else writeNew(into, text)
  return 0
}

function tablesIn(folder: string): ReadonlyMap<TableName, Source> {
  const files = tableNames.map(name => ({ name, file: join(folder, `${name}.csv`) }))
  const missing = files.filter(({ name, file }) => needed.includes(name) && !existsSync(file))
  if (missing.length > 0)
    throw new Complaint(`${folder} has no ${missing.map(({ file }) => basename(file)).join(', no ')}.`)
  return new Map(
    files.filter(({ file }) => existsSync(file)).map(({ name, file }) => [name, read(file)] as const),
  )
}

function read(file: string): Source {
  try {
    if (statSync(file).size > most) throw new Complaint(`${file} is larger than 4 MB.`)
    return { name: file, text: decode(readFileSync(file), file).value }
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
