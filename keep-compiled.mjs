// Runs a check and keeps what V8 made of the command, for the next start: `node keep-compiled.mjs dist`.
import { writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join, resolve } from 'node:path'

const folder = resolve(process.argv[2])
const cli = join(folder, 'cli.cjs')
process.argv = [process.execPath, cli, 'check', join(import.meta.dirname, 'rigs', 'barque-harrow-tansy.rig')]
const { command } = createRequire(cli)(cli)
process.once('exit', () => writeFileSync(join(folder, 'command.v8'), command.createCachedData()))
