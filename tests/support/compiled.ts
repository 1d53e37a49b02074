import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { compile } from '../../src/compile.ts'
import type { Files } from '../../src/syntax/index.ts'

const rigs = new URL('../../rigs/', import.meta.url)

/** The files of the example rigs: beside a vessel lies `rigs/`, and the standard gear in `rigs/gear/`. */
export const exampleFiles: Files = {
  read: ({ shelf, path }) => {
    const file = new URL(shelf === 'standard gear' ? `gear/${path}` : path, rigs)
    if (!existsSync(file)) return { kind: 'missing' }
    const name = shelf === 'standard gear' ? `standard gear/${path}` : path
    return { kind: 'text', source: { name, text: readFileSync(file, 'utf8') }, findings: [] }
  },
}

/** A text compiled as if it lay beside the example rigs. */
export const compiledText = (text: string, name = 'test.rig') => compile(exampleFiles, { name, text })

/** The text of an example rig: 'barque-harrow-tansy'. */
export const exampleText = (rig: string) => readFileSync(new URL(`${rig}.rig`, rigs), 'utf8')

/** An example rig, compiled. */
export const compiledRig = (rig: string) => compiledText(exampleText(rig), `${rig}.rig`)

/** The names of all example rigs, sorted. */
export const exampleRigs: readonly string[] = readdirSync(rigs)
  .filter(file => file.endsWith('.rig'))
  .map(file => file.slice(0, -'.rig'.length))
  .sort()
