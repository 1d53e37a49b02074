// Runs a check and keeps what V8 made of the command, for the next start: `node keep-compiled.mjs dist`.
import { writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'

const folder = resolve(process.argv[2])
const cli = join(folder, 'cli.js')
process.argv = [process.execPath, cli, 'check', join(import.meta.dirname, 'rigs', 'barque-harrow-tansy.rig')]
const { command } = await import(pathToFileURL(cli).href)
process.once('exit', () => writeFileSync(join(folder, 'command.v8'), command.createCachedData()))
