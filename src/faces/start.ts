#!/usr/bin/env node
import { existsSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { setFlagsFromString } from 'node:v8'
import { Script } from 'node:vm'
import { optimiseLater } from './optimise-later.ts'

/*
 * What is run as `crosstree`. The command itself, bundled into one script, lies beside it with what V8 made of it when
 * it was built: reading that takes a fraction of compiling it. Another V8 refuses it, and compiles the script as ever.
 */
const url = new URL('./command.cjs', import.meta.url)
const compiled = new URL('./command.v8', import.meta.url)

const option = optimiseLater(process.versions.v8)
if (option !== undefined) setFlagsFromString(option)

/** The command as V8 has it; after a run, the build keeps what it then knows. */
export const command = new Script(readFileSync(url, 'utf8'), {
  filename: fileURLToPath(url),
  ...(existsSync(compiled) ? { cachedData: readFileSync(compiled) } : {}),
})

const importModule = (path: string) => import(path)
command.runInThisContext()(createRequire(url), importModule, url.href)
