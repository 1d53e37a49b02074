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
  /** Where room is short. */
  readonly short: string | undefined
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
  return joined(', ', [sailIn(tongue, line.host), word])
}

/** The word for a line where its sail is already told: 'Geitau'. */
export const wordIn = (tongue: Tongue, line: Line): Foreign | Missing => termIn(tongue, wordOf(line))

/** The same where room is short: the ship's own short form, or the glossary's of the sail, of the word, or of both. */
export function shortIn(tongue: Tongue, line: Line): Foreign | undefined {
  const own = tongue.labels.get(line.pairKey)
  if (own) return own.short === undefined ? undefined : { words: own.short, fromMemory: false }
  const inShort = (word: string) => {
    const term = tongue.terms.get(word)
    return term?.short === undefined
      ? undefined
      : { words: term.short, fromMemory: term.source === undefined }
  }
  const word = inShort(wordOf(line))
  if (line.host?.kind !== 'sail') return word
  const sail = inShort(line.host.name)
  if (!word && !sail) return undefined
  const both = joined(', ', [sail ?? sailIn(tongue, line.host), word ?? wordIn(tongue, line)])
  return 'words' in both ? both : undefined
}

/** What is spoken, in another language: all of it, or sentence by sentence as the glossary has each. */
export function spokenIn(tongue: Tongue, words: string): Foreign | Missing {
  const whole = termIn(tongue, words)
  const sentences = words.match(/[^.!?]+[.!?]*/g)?.map(sentence => sentence.trim()) ?? []
  if ('words' in whole || sentences.length < 2) return whole
  return joined(
    ' ',
    sentences.map(sentence => termIn(tongue, sentence)),
  )
}

function termIn({ terms }: Tongue, word: string): Foreign | Missing {
  const term = terms.get(word.toLowerCase())
  return term ? { words: term.word, fromMemory: term.source === undefined } : { missing: [word] }
}

const wordOf = (line: Line): string => (line.host ? line.words.slice(line.host.name.length + 1) : line.words)

/** A name or a saying of several words, each found; if one is missing there is none. */
function joined(between: string, parts: readonly (Foreign | Missing)[]): Foreign | Missing {
  const found = parts.flatMap(part => ('words' in part ? [part] : []))
  if (found.length < parts.length)
    return { missing: parts.flatMap(part => ('missing' in part ? part.missing : [])) }
  return {
    words: found.map(({ words }) => words).join(between),
    fromMemory: found.some(({ fromMemory }) => fromMemory),
  }
}
