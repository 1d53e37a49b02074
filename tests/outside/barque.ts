import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { builtCli, start } from '../support/built-cli.ts'

const rig = join(import.meta.dirname, '../../rigs/barque-harrow-tansy.rig')

/** Writes papers of the barque with these verbs of the command line, and returns their folder. */
export async function barquePapers(...verbs: readonly string[]): Promise<string> {
  const cli = await builtCli()
  const place = mkdtempSync(join(tmpdir(), 'crosstree-'))
  const folder = join(place, 'papers')
  for (const verb of verbs) {
    const run = start(cli, [verb, rig, '--into', folder], place)
    const code = await new Promise(done => run.on('exit', done))
    if (code !== 0) throw new Error(`the papers of the barque are not written: exit code ${code}`)
  }
  return folder
}
