import {
  copyFileSync,
  existsSync,
  linkSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { constants } from 'node:os'
import { basename, dirname, join, resolve } from 'node:path'
import { Complaint, inWords } from './complaint.ts'

/** A finished file: its name within the folder, and its bytes. */
export interface Finished {
  readonly name: string
  readonly bytes: Uint8Array | string
}

/**
 * Puts finished files into a folder, all at once: they are written in a new folder beside it, together with what
 * else the old one holds, and the two change places by renaming. Killed before, the old papers stand; killed
 * after, the new. Between the two renames, an instant, the old folder stands under its other name, and the next
 * run puts it back.
 */
export function publish(
  folder: string,
  files: readonly Finished[],
  replaces: (name: string) => boolean,
): void {
  // A link stays a link: what it leads to is what is replaced.
  const target = existsSync(folder) ? realpathSync(folder) : resolve(folder)
  const hidden = (what: string) => join(dirname(target), `.${basename(target)}.${what}`)
  const [fresh, old, lock] = [hidden('new'), hidden('old'), hidden('lock')]
  try {
    mkdirSync(dirname(target), { recursive: true })
    takeLock(lock, folder)
  } catch (error) {
    throw error instanceof Complaint ? error : new Complaint(`${folder} can't be written: ${inWords(error)}.`)
  }
  const letGo = () => {
    rmSync(fresh, { recursive: true, force: true })
    rmSync(lock, { force: true })
  }
  holdInterrupts()
  try {
    putBack(target, old)
    rmSync(fresh, { recursive: true, force: true })
    mkdirSync(fresh)
    if (existsSync(target)) keepOthers(target, fresh, replaces)
    for (const { name, bytes } of files) writeFileSync(join(fresh, name), bytes)
    if (existsSync(target)) renameSync(target, old)
    renameSync(fresh, target)
    rmSync(old, { recursive: true, force: true })
  } catch (error) {
    putBack(target, old)
    throw new Complaint(`${folder} can't be written: ${inWords(error)}. What was there before is untouched.`)
  } finally {
    letGo()
  }
}

/** An interruption waits until the folders have changed places: no handler runs before, for nothing here waits. */
function holdInterrupts(): void {
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    if (!process.listeners(signal).includes(leave)) process.on(signal, leave)
  }
}

const leave = (signal: NodeJS.Signals): never => process.exit(128 + constants.signals[signal])

/** Mends what a kill between the two renames left. */
function putBack(target: string, old: string): void {
  if (!existsSync(old)) return
  if (existsSync(target)) rmSync(old, { recursive: true, force: true })
  else renameSync(old, target)
}

/** One run writes at a time. A lock whose holder is gone is taken over. */
function takeLock(lock: string, folder: string): void {
  for (let tries = 0; tries < 2; tries++) {
    try {
      writeFileSync(lock, String(process.pid), { flag: 'wx' })
      return
    } catch (error) {
      const exists = error instanceof Error && 'code' in error && error.code === 'EEXIST'
      if (!exists) throw error
      if (isAlive(holderOf(lock))) break
      rmSync(lock, { force: true })
    }
  }
  throw new Complaint(`another run is writing into ${folder}; try again when it is done.`)
}

/** Who holds a lock. It is empty for the instant between its making and its writing, so that it is then read once more. */
function holderOf(lock: string): number {
  const written = readFileSync(lock, 'utf8')
  if (written !== '') return Number(written)
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 50)
  return Number(readFileSync(lock, 'utf8'))
}

function isAlive(pid: number): boolean {
  if (!Number.isInteger(pid) || pid <= 0) return false
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM'
  }
}

/** Everything in the old folder that this run does not replace goes along, linked rather than copied where it can be. */
function keepOthers(from: string, to: string, replaces: (name: string) => boolean): void {
  for (const name of readdirSync(from)) {
    if (!replaces(name)) keep(join(from, name), join(to, name))
  }
}

function keep(from: string, to: string): void {
  const stats = lstatSync(from)
  if (stats.isSymbolicLink()) symlinkSync(readlinkSync(from), to)
  else if (stats.isDirectory()) {
    mkdirSync(to)
    keepOthers(from, to, () => false)
  } else {
    try {
      linkSync(from, to)
    } catch {
      copyFileSync(from, to)
    }
  }
}
