import {
  accessSync,
  constants,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { decode } from '../text/index.ts'
import { Complaint, inWords } from './complaint.ts'

/** A file whose text is to change, with the text it was read to have. */
export interface Rewriting {
  readonly file: string
  readonly before: string
  readonly after: string
}

/**
 * Changes the texts of files, each at one stroke by renaming: killed before, the old stands, killed after, the new. A
 * file that is not as it was read is refused, and one that can't be written back in its own encoding, before
 * any is touched. A link stays a link, and a file keeps its mode.
 */
export function rewrite(changes: readonly Rewriting[]): void {
  const ready: { readonly target: string; readonly fresh: string }[] = []
  try {
    for (const change of changes) {
      const made = besides(change)
      // One file may be named in two ways.
      if (!ready.some(({ target }) => target === made.target)) ready.push(made)
    }
    for (const { target, fresh } of ready) renameSync(fresh, target)
  } catch (error) {
    throw error instanceof Complaint ? error : new Complaint(`the change can't be made: ${inWords(error)}.`)
  } finally {
    for (const { fresh } of ready) rmSync(fresh, { force: true })
  }
}

/** Writes the new text into a hidden file beside the old one. */
function besides({ file, before, after }: Rewriting): { readonly target: string; readonly fresh: string } {
  try {
    const target = realpathSync(file)
    const bytes = readFileSync(target)
    if (decode(bytes, file).value !== before)
      throw new Complaint(`${file} has changed since it was read; nothing is written.`)
    const encode = encodingOf(bytes, before)
    if (!encode) throw new Complaint(`${file} is no sound UTF-8: save it so first; nothing is written.`)
    accessSync(target, constants.W_OK)
    const fresh = join(dirname(target), `.${basename(target)}.new`)
    rmSync(fresh, { force: true })
    writeFileSync(fresh, encode(after), { mode: statSync(target).mode, flag: 'wx' })
    return { target, fresh }
  } catch (error) {
    if (error instanceof Complaint) throw error
    throw new Complaint(`${file} can't be written: ${inWords(error)}. It is untouched.`)
  }
}

type Encode = (text: string) => Uint8Array

const encodings: readonly Encode[] = [
  text => Buffer.from(text),
  text => Buffer.from(`\ufeff${text}`),
  text => Buffer.from(`\ufeff${text}`, 'utf16le'),
  text => Buffer.from(`\ufeff${text}`, 'utf16le').swap16(),
]

/** The encoding that makes of a text the very bytes it was read from. */
const encodingOf = (bytes: Uint8Array, text: string): Encode | undefined =>
  encodings.find(encode => Buffer.compare(encode(text), bytes) === 0)
