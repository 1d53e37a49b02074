import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { compile } from '../../src/compile.ts'
import { type Files, parse, type Reading } from '../../src/syntax/index.ts'

const rigs = new URL('../../rigs/', import.meta.url)

/** The files of the example rigs as they are written: beside a vessel lies `rigs/`, and the standard gear in `rigs/gear/`. */
export const writtenFiles: Files = {
  read: ({ shelf, path }) =>
    shelf === 'standard gear'
      ? readingOf(new URL(`gear/${path}`, rigs), `standard gear/${path}`)
      : readingOf(new URL(path, rigs), path),
}

/** The texts of the standard gear, each parsed once: as a build keeps them. */
const gear = new Map<string, Reading>()

/** The same, with the trees of the standard gear. */
export const exampleFiles: Files = {
  read: wanted => {
    if (wanted.shelf !== 'standard gear') return writtenFiles.read(wanted)
    const reading = gear.get(wanted.path) ?? parsed(writtenFiles.read(wanted))
    gear.set(wanted.path, reading)
    return reading
  },
}

function readingOf(file: URL, name: string): Reading {
  if (!existsSync(file)) return { kind: 'missing' }
  return { kind: 'text', source: { name, text: readFileSync(file, 'utf8') }, findings: [] }
}

/** A tree goes along only where nothing is found in its text. */
function parsed(reading: Reading): Reading {
  if (reading.kind !== 'text') return reading
  const { value, findings } = parse(reading.source)
  return findings.length > 0 ? reading : { ...reading, tree: value }
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
