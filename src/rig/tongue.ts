import type { Line } from './line.ts'
import type { Sail } from './sail.ts'

/** What things and words are called in one language: the ship's own labels, and a glossary of the trade. */
export interface Tongue {
  /** 'German', as the pages say it. */
  readonly language: string
  /** By `pairKey` of a line or name of another thing. */
  readonly labels: ReadonlyMap<
    string,
    { readonly label: string | undefined; readonly short: string | undefined }
  >
  /** By the English word: 'clewline', 'fore course'; of what is spoken by all of it: 'hoist away.'. */
  readonly terms: ReadonlyMap<string, Term>
}

export interface Term {
  readonly word: string
  /** The work it is taken from; undefined where it is from memory. */
  readonly source: string | undefined
}

/** A name in another language; doubtful where a word of it is from memory, and is printed with a mark. */
export interface Foreign {
  readonly words: string
  readonly fromMemory: boolean
}

/** A name whose words a glossary lacks is none: never half in one language. */
export type Missing = { readonly missing: readonly string[] }

/** The name of a sail: as the ship's labels have it, or else as the glossary has the word. */
export function sailIn(tongue: Tongue, sail: Pick<Sail, 'name'>): Foreign | Missing {
  const own = tongue.labels.get(sail.name)?.label
  return own === undefined ? termIn(tongue, sail.name) : { words: own, fromMemory: false }
}

/** The name of a line: its own label, or its sail's name and the word for it: 'Vormarssegel, Geitau'. */
export function lineIn(tongue: Tongue, line: Line): Foreign | Missing {
  const own = tongue.labels.get(line.pairKey)?.label
  if (own !== undefined) return { words: own, fromMemory: false }
  const word = wordIn(tongue, line)
  if (line.host?.kind !== 'sail') return word
  return joined(sailIn(tongue, line.host), word)
}

/** The word for a line where its sail is already told: 'Geitau'. */
export const wordIn = (tongue: Tongue, line: Line): Foreign | Missing => termIn(tongue, wordOf(line))

/** What is spoken, in another language. */
export const spokenIn = (tongue: Tongue, words: string): Foreign | Missing => termIn(tongue, words)

function termIn({ terms }: Tongue, word: string): Foreign | Missing {
  const term = terms.get(word.toLowerCase())
  return term ? { words: term.word, fromMemory: term.source === undefined } : { missing: [word] }
}

const wordOf = (line: Line): string => (line.host ? line.words.slice(line.host.name.length + 1) : line.words)

function joined(host: Foreign | Missing, word: Foreign | Missing): Foreign | Missing {
  if ('missing' in host || 'missing' in word) {
    return { missing: [host, word].flatMap(one => ('missing' in one ? one.missing : [])) }
  }
  return { words: `${host.words}, ${word.words}`, fromMemory: host.fromMemory || word.fromMemory }
}
