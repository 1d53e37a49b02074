import type { Files } from '../../src/syntax/index.ts'
import type { Source } from '../../src/text/index.ts'
import { writtenFiles } from '../support/compiled.ts'

/** So many blocks stand in one text; more are brought in, since a text may have no more than 4 MB. */
const blocksInOne = 3_000

/** A vessel of about so many lines: masts with a headsail and a rail each, and every line belayed, as often as need be. */
export function longRig(lines: number): {
  readonly files: Files
  readonly entry: Source
  readonly lines: number
} {
  const blocks = Math.max(1, Math.round((lines - head.length) / blockOf(0).length))
  const parts = Array.from({ length: Math.ceil(blocks / blocksInOne) }, (_, part) => {
    const first = part * blocksInOne
    return Array.from({ length: Math.min(blocksInOne, blocks - first) }, (_, i) => blockOf(first + i)).flat()
  })
  const [own = [], ...others] = parts
  const brought = new Map(others.map((text, i) => [`part-${i + 2}.rig`, text.join('\n')]))
  const text = [...head, ...[...brought.keys()].map(name => `bring in "${name}"`), ...own, ''].join('\n')
  return {
    files: {
      read: place => {
        const part = place.shelf === 'vessel' ? brought.get(place.path) : undefined
        if (part === undefined) return writtenFiles.read(place)
        return { kind: 'text', source: { name: place.path, text: part }, findings: [] }
      },
    },
    entry: { name: 'long.rig', text },
    lines: parts.flat().length + head.length + brought.size,
  }
}

const head = ['edition 1', 'bring in standard gear', '', 'vessel Long Tally', '  cutter', '']

/** One mast of hers with all that hangs on it; its name is made of letters, for figures in names mean pins. */
function blockOf(index: number): readonly string[] {
  const name = nameOf(index)
  const at = 3 + index * 3
  const metres = (figure: number) => `${figure.toFixed(2)} m aft`
  return [
    'masts',
    `  ${name} mast, stepped ${metres(at)} 0.80 m up`,
    '    lower mast to 11.00 m up',
    'stays',
    `  ${name} stay from ${metres(at + 0.1)} 9.50 m up to ${metres(at - 2.8)} 1.40 m up`,
    'sails',
    `  ${name} jib, headsail on ${name} stay`,
    `    tack ${metres(at - 2.6)} 1.70 m up, head ${metres(at - 0.2)} 8.60 m up, clew ${metres(at - 0.1)} 1.90 m up`,
    '    gear jib',
    `      fairlead at ${metres(at + 0.6)} 1.20 m out 1.10 m up`,
    'rails',
    `  ${name} rail, port and starboard, marked ${name.toUpperCase()}`,
    `    3 pins from ${metres(at)} 1.30 m out to ${metres(at + 0.6)} 1.30 m out, 1.20 m up`,
    `belay on ${name} rail`,
    `  1  port ${name} jib halyard, starboard ${name} jib downhaul`,
    `  2  ${name} jib sheet`,
    '  3  free',
    '',
  ]
}

/** A word of consonant and vowel in turn, another for each number: 'baba', 'baca'. */
function nameOf(index: number): string {
  const consonants = 'bcdfgklmnpqrtvwz'
  const vowels = 'aeo'
  let left = index
  let word = ''
  for (let syllable = 0; syllable < 3; syllable++) {
    word = `${consonants[left % 16]}${vowels[Math.floor(left / 16) % 3]}${word}`
    left = Math.floor(left / 48)
  }
  return `q${word}`
}
