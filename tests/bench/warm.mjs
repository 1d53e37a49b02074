// Prints how many lines of a rig and her gear are parsed, parsed and built, and compiled whole in a second of processor
// time, and how many lines they are. Run in a process of its own, since V8 takes some 60 rounds to settle what it compiles.
import { createRequire } from 'node:module'
import { rigIn } from './files-beside.mjs'

const [bundle, rig] = process.argv.slice(2)
const { buildRig, compile, gather } = createRequire(import.meta.url)(bundle)
const { files, source } = rigIn(rig)
const lines = gather(files, source).value.sources.reduce((sum, { text }) => sum + text.split('\n').length, 0)

function pace(work) {
  const times = Array.from({ length: 180 }, () => {
    const start = process.cpuUsage()
    work()
    const { user, system } = process.cpuUsage(start)
    return user + system
  })
  const settled = times.slice(100).sort((a, b) => a - b)
  return (lines / settled[settled.length / 2]) * 1e6
}

const building = pace(() => {
  const { pages, sources } = gather(files, source).value
  return buildRig(pages, sources)
})
const compiling = pace(() => compile(files, source))
const parsing = pace(() => gather(files, source))
process.stdout.write(JSON.stringify({ lines, parsing, building, compiling }))
