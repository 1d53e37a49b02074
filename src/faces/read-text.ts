import { closeSync, fstatSync, openSync, readSync, realpathSync, statSync } from 'node:fs'
import { basename, dirname, join, relative, sep } from 'node:path'
import type { Files, Reading } from '../syntax/index.ts'
import { decode } from '../text/index.ts'
import { Complaint, inWords } from './complaint.ts'
import { standardGearFolder } from './home.ts'
import { keptTree } from './kept-tree.ts'

/** One byte more than a text may have: enough to tell that it is too large. */
const most = 4 * 1024 * 1024 + 1

/** A text read from a file or from standard input, and the files that may stand beside it. */
export interface Entry {
  readonly read: Extract<Reading, { kind: 'text' }>
  readonly files: Files
  /** Its path from its own folder: what it brings in is found from there. */
  readonly path: string
  /** What its papers are named by: 'barque-harrow-tansy'. */
  readonly stem: string
}

/** Reads the text that the user names, or standard input for "-". Complains of what can't be read. */
export function readEntry(file: string, nameOfInput: string): Entry {
  if (file === '-') return entryOf(standardInput(), nameOfInput, process.cwd())
  try {
    const stats = statSync(file)
    if (stats.isDirectory()) throw new Complaint(`${file}: it is a folder; name the rig's own file in it.`)
    if (!stats.isFile())
      throw new Complaint(`${file}: it is not a plain file; give a pipe on standard input, with "-".`)
    return entryOf(beginning(file), file, dirname(file))
  } catch (error) {
    if (error instanceof Complaint) throw error
    throw new Complaint(`${file} can't be read: ${inWords(error)}.`)
  }
}

function entryOf(bytes: Uint8Array, file: string, folder: string): Entry {
  const name = slashed(file)
  const text = decoded(bytes, name)
  const stem = basename(name).replace(/\.rig$/i, '')
  return { read: text, files: filesOf(folder, name), path: basename(name), stem }
}

const slashed = (path: string) => (sep === '/' ? path : path.split(sep).join('/'))

function decoded(bytes: Uint8Array, name: string): Extract<Reading, { kind: 'text' }> {
  const { value: text, findings } = decode(bytes, name)
  return { kind: 'text', source: { name, text }, findings }
}

/** The beginning of a file, as far as a text may go. Opened without waiting, so that a pipe can't hold us. */
function beginning(file: string): Uint8Array {
  const handle = openSync(file, 'r')
  try {
    const size = Math.min(fstatSync(handle).size, most)
    const bytes = Buffer.alloc(size)
    let filled = 0
    while (filled < size) {
      const got = readSync(handle, bytes, filled, size - filled, filled)
      if (got === 0) break
      filled += got
    }
    return bytes.subarray(0, filled)
  } finally {
    closeSync(handle)
  }
}

function standardInput(): Uint8Array {
  const pieces: Buffer[] = []
  let size = 0
  const piece = Buffer.alloc(65536)
  while (size < most) {
    const got = readPiece(piece)
    if (got === 0) break
    pieces.push(Buffer.from(piece.subarray(0, got)))
    size += got
  }
  return Buffer.concat(pieces).subarray(0, most)
}

function readPiece(piece: Buffer): number {
  for (;;) {
    try {
      return readSync(0, piece)
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? error.code : ''
      if (code === 'EOF') return 0
      if (code !== 'EAGAIN') throw new Complaint(`standard input can't be read: ${inWords(error)}.`)
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 10)
    }
  }
}

/** Texts in the entry's folder and the folders in it, and the standard gear; no link leads out of either. */
function filesOf(folder: string, entryName: string): Files {
  const beside = slashed(dirname(entryName))
  return {
    read: ({ shelf, path }) =>
      shelf === 'standard gear'
        ? ofStandardGear(path)
        : readWithin(folder, path, beside === '.' ? path : `${beside}/${path}`),
  }
}

/** The standard gear alone, for a text that stands beside nothing. */
export const standardFiles: Files = {
  read: ({ shelf, path }) => (shelf === 'standard gear' ? ofStandardGear(path) : { kind: 'missing' }),
}

function ofStandardGear(path: string): Reading {
  const reading = readWithin(standardGearFolder, path, `standard gear/${path}`)
  return reading.kind === 'text' ? { ...reading, tree: keptTree(path, reading.source) } : reading
}

function readWithin(folder: string, path: string, name: string): Reading {
  const file = join(folder, path)
  try {
    const within = relative(realpathSync(folder), realpathSync(file))
    if (within.startsWith('..') || within.startsWith(sep))
      return { kind: 'refused', because: 'it is a link out of the folder' }
    const stats = statSync(file)
    if (!stats.isFile())
      return { kind: 'refused', because: stats.isDirectory() ? 'it is a folder' : 'it is not a plain file' }
    return decoded(beginning(file), name)
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : ''
    return code === 'ENOENT' ? { kind: 'missing' } : { kind: 'refused', because: inWords(error) }
  }
}
