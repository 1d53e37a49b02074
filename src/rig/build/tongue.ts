import { type Name, nameKey, type Page } from '../../syntax/index.ts'
import type { Term, Tongue } from '../tongue.ts'
import { clause } from './clauses.ts'
import { type Known, keysOf } from './label.ts'
import { finding, type Say } from './say.ts'

/** What the pages of labels and the glossaries say in other languages, by the language's name in small letters. */
export function buildTongues(pages: readonly Page[], known: Known, say: Say): ReadonlyMap<string, Tongue> {
  const tongues = new Map<string, Draft>()
  for (const page of pages) {
    if (page.kind !== 'labels' && page.kind !== 'glossary') continue
    const [language] = clause(page, 'in')?.names ?? []
    if (!language) {
      if (page.kind === 'glossary') say(languageMissing(page))
      continue
    }
    const tongue = tongueOf(tongues, language)
    for (const entry of page.block) {
      const label = (clause(entry, 'label') ?? clause(entry, 'called'))?.label.text
      if (!entry.name) continue
      if (page.kind === 'labels') {
        const short = clause(entry, 'short')?.label.text
        const kind = /^every (.+)$/.exec(nameKey(entry.name.words))?.[1]
        // "Every clewline" is a word for all of them, said by the ship herself: each is named after its own sail.
        if (kind !== undefined && label !== undefined)
          tongue.terms.set(kind, { word: label, short, source: 'the ship' })
        else for (const key of keysOf(entry.name, known)) tongue.labels.set(key, { label, short })
      } else if (label !== undefined) {
        const key = entry.name.quoted ? entry.name.words.toLowerCase() : nameKey(entry.name.words)
        const short = clause(entry, 'short')?.label.text
        tongue.terms.set(key, { word: label, short, source: clause(entry, 'source')?.words?.text })
      } else say(wordMissing(entry.name, tongue.language))
    }
  }
  return tongues
}

interface Draft extends Tongue {
  readonly labels: Map<string, { readonly label: string | undefined; readonly short: string | undefined }>
  readonly terms: Map<string, Term>
}

function tongueOf(tongues: Map<string, Draft>, { words }: Name): Draft {
  const key = nameKey(words)
  const tongue = tongues.get(key) ?? { language: words, labels: new Map(), terms: new Map() }
  tongues.set(key, tongue)
  return tongue
}

const languageMissing = (page: Page) =>
  finding('name/glossary-language', page.span, "It isn't said in which language this glossary is.", {
    remedy: 'Say it, as in "glossary in German".',
  })

const wordMissing = (name: Name, language: string) =>
  finding('name/glossary-word', name.span, `The ${language} word for "${name.words}" isn't given.`, {
    remedy: 'Say it between quotation marks, and where it is from: "Geitau" from memory.',
  })
