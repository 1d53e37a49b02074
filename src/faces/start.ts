#!/usr/bin/env node
import { existsSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { setFlagsFromString } from 'node:v8'
import { Script } from 'node:vm'
import { optimiseLater } from './optimise-later.ts'

/*
 * What is run as `crosstree`. The command itself, bundled into one script, lies beside it with what V8 made of it when
 * it was built: reading that takes a fraction of compiling it. Another V8 refuses it, and compiles the script as ever.
 * Node starts a script sooner than a module, so that this is built as a script too.
 */
const path = join(import.meta.dirname, 'command.cjs')
const compiled = join(import.meta.dirname, 'command.v8')

const option = optimiseLater(process.versions.v8)
if (option !== undefined) setFlagsFromString(option)

/** The command as V8 has it; after a run, the build keeps what it then knows. */
export const command = new Script(readFileSync(path, 'latin1'), {
  filename: path,
  ...(existsSync(compiled) ? { cachedData: readFileSync(compiled) } : {}),
})

const importModule = (path: string) => import(path)
command.runInThisContext()(createRequire(path), importModule, pathToFileURL(path).href)
