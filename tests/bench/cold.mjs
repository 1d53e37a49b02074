// Prints what the parts of a cold check cost, in milliseconds: loading the bundled compiler with what V8 kept of it,
// making the parser, the first compile, and a second one. Run in a process of its own: the first run keeps.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { Script } from 'node:vm'
import { rigIn } from './files-beside.mjs'

const [bundle, rig] = process.argv.slice(2)
const kept = `${bundle}.v8`
const { files, source } = rigIn(rig)
const times = [performance.now()]
const script = new Script(`(function (module, require) {${readFileSync(bundle, 'utf8')}\n})`, {
  filename: bundle,
  ...(existsSync(kept) ? { cachedData: readFileSync(kept) } : {}),
})
const module = { exports: {} }
script.runInThisContext()(module, createRequire(import.meta.url))
const { compile, parse } = module.exports
times.push(performance.now())
parse({ name: 'tern.rig', text: 'vessel Tern\n' })
times.push(performance.now())
for (let round = 0; round < 2; round++) {
  compile(files, source, 'entry.rig')
  times.push(performance.now())
}
if (!existsSync(kept)) writeFileSync(kept, script.createCachedData())
const [load, grammar, first, second] = times.slice(1).map((time, i) => time - times[i])
process.stdout.write(JSON.stringify({ load, grammar, first, second }))
