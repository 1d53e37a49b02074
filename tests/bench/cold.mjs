// Prints what the parts of a cold check cost, in milliseconds: loading the built compiler, the first compile (which
// analyses the grammar), and a second one. Run in a process of its own.
import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

const [rig] = process.argv.slice(2)
const gear = join(dirname(rig), 'gear')
const files = {
  read: ({ shelf, path }) => {
    const text = readFileSync(join(shelf === 'standard gear' ? gear : dirname(rig), path), 'utf8')
    return { kind: 'text', source: { name: `${shelf}/${path}`, text }, findings: [] }
  },
}
const source = { name: rig, text: readFileSync(rig, 'utf8') }
const times = [performance.now()]
const { compile } = await import('../../dist/index.js')
times.push(performance.now())
for (let round = 0; round < 2; round++) {
  compile(files, source, 'entry.rig')
  times.push(performance.now())
}
const [load, first, second] = times.slice(1).map((time, i) => time - times[i])
process.stdout.write(JSON.stringify({ load, first, second }))
