import { Command } from 'commander'
import fc from 'fast-check'
import { mustHold, texts } from './properties.ts'

const { minutes, seed } = new Command('fuzz')
  .description('Throws texts at the compiler for some minutes, and prints how many it tried.')
  .option('--minutes <number>', 'how long', Number, 20)
  .option('--seed <number>', 'the first seed; the texts follow from it', Number, 1)
  .parse()
  .opts<{ minutes: number; seed: number }>()

const end = Date.now() + minutes * 60_000
const rounds = { fragments: 2_000, 'whole rigs': 50 } as const
const tried = { fragments: 0, 'whole rigs': 0 }
let slowest = { took: 0, text: '' }

for (let round = seed; Date.now() < end; round++) {
  for (const kind of ['fragments', 'whole rigs'] as const) {
    const property = fc.property(texts[kind], text => {
      const start = process.cpuUsage()
      mustHold(text)
      const { user, system } = process.cpuUsage(start)
      const took = (user + system) / 1e6
      if (took > slowest.took) slowest = { took, text }
      tried[kind]++
    })
    const told = fc.check(property, { seed: round, numRuns: rounds[kind] })
    if (told.failed) {
      process.stdout.write(
        `Round ${round}, ${kind}: ${String(told.errorInstance)}\n\n${told.counterexample?.[0]}\n`,
      )
      process.exit(1)
    }
  }
}

process.stdout.write(
  `Tried ${tried.fragments} fragments and ${tried['whole rigs']} whole rigs from seed ${seed}. ` +
    `The slowest took ${slowest.took.toFixed(2)} s of the processor:\n\n${slowest.text}\n`,
)
