import type { Finding, Found } from '../findings/index.ts'
import type { Source, Span } from '../text/index.ts'
import { parse } from './parse.ts'
import type { Page, Tree } from './tree.ts'

/** How the compiler asks for texts. A path is from the entry's folder, with forward slashes: 'gear/own.rig'. */
export interface Files {
  readonly read: (place: FilePlace) => Reading
}

/** Where a text is kept: beside the vessel, or in the standard gear that comes with the program. */
export interface FilePlace {
  readonly shelf: 'vessel' | 'standard gear'
  readonly path: string
}

export type Reading =
  | {
      readonly kind: 'text'
      readonly source: Source
      readonly findings: readonly Finding[]
      /** The tree of this very text, where it lies ready: then it need not be parsed. Nothing is found in it. */
      readonly tree?: Tree | undefined
    }
  | { readonly kind: 'missing' }
  /** A folder, a link out of the entry's folder, something that can't be read. */
  | { readonly kind: 'refused'; readonly because: string }

/** All pages in the order they are read: what is brought in stands where it is brought in. */
export interface Gathered {
  readonly pages: readonly Page[]
  /** The entry's text first. */
  readonly sources: readonly Source[]
}

/** Texts may bring in texts this deep, and this many in all. */
const deepest = 16
const mostFiles = 256

const standardGear: FilePlace = { shelf: 'standard gear', path: 'standard-gear.rig' }

/** Parses the entry and, in their places, all the texts that it brings in. */
export function gather(files: Files, entry: Source, entryPath = entry.name): Found<Gathered> {
  const pages: Page[] = []
  const sources: Source[] = []
  const findings: Finding[] = []
  const seen = new Map<string, Span | undefined>()

  const take = (source: Source, here: FilePlace, within: readonly string[], ready?: Tree) => {
    sources.push(source)
    const parsed = ready ? { value: ready, findings: [] } : parse(source)
    for (const finding of parsed.findings) findings.push(finding)
    for (const page of parsed.value.pages) {
      pages.push(page)
      if (page.kind === 'bringIn') bring(page, here, within)
    }
  }

  const bring = (page: Page, here: FilePlace, within: readonly string[]) => {
    const wanted = placeOf(page, here)
    if (!wanted) {
      if (!page.doubtful) findings.push(outside(page))
      return
    }
    const key = keyOf(wanted)
    if (within.includes(key)) findings.push(loop(page, wanted))
    else if (seen.has(key)) findings.push(again(page, wanted, seen.get(key)))
    else if (within.length >= deepest || sources.length >= mostFiles) findings.push(tooDeep(page))
    else {
      seen.set(key, page.span)
      const reading = files.read(wanted)
      if (reading.kind !== 'text') findings.push(notRead(page, wanted, reading))
      else {
        findings.push(...reading.findings)
        take(reading.source, wanted, [...within, key], reading.tree)
      }
    }
  }

  const place: FilePlace = { shelf: 'vessel', path: entryPath }
  take(entry, place, [keyOf(place)])
  if (pages.length === 0 && findings.length === 0) findings.push(empty(entry))
  return { value: { pages, sources }, findings }
}

const empty = ({ name }: Source): Finding =>
  fileFinding(
    'file/empty',
    { source: name, start: 0, end: 0 },
    'There is nothing in this text.',
    'Begin with a page, as in "vessel Tern", and "masts" below it.',
  )

const keyOf = ({ shelf, path }: FilePlace) => `${shelf}: ${path}`

/** The text a page asks for, or undefined where it lies outside the entry's folder. */
function placeOf(page: Page, here: FilePlace): FilePlace | undefined {
  const label = page.clauses.find(one => one.kind === 'label')?.label.text
  if (label === undefined) return page.name ? ofTheProgram(page.name.words) : undefined
  const path = joined(here.path, label)
  return path === undefined ? undefined : { shelf: here.shelf, path }
}

/** 'standard gear', or the glossary of a language: 'German glossary'. */
function ofTheProgram(words: string): FilePlace {
  if (!/ glossary$/i.test(words.trim())) return standardGear
  const [, language] = /^([\p{L}]+) glossary$/iu.exec(words.trim()) ?? []
  return language ? { shelf: 'standard gear', path: `glossary-${language.toLowerCase()}.rig` } : standardGear
}

/** A path said in one text, from the entry's folder; undefined where it would leave it. */
function joined(from: string, path: string): string | undefined {
  if (path === '' || /^[\\/]|^[a-z]:|[\\\0]/i.test(path)) return undefined
  const parts = from.split('/').slice(0, -1)
  for (const part of path.split('/')) {
    if (part === '' || part === '.') continue
    if (part !== '..') parts.push(part)
    else if (parts.pop() === undefined) return undefined
  }
  return parts.length > 0 ? parts.join('/') : undefined
}

const fileFinding = (rule: Finding['rule'], at: Span, message: string, remedy: string): Finding => ({
  rule,
  severity: 'error',
  at,
  message,
  remedy,
  related: [],
})

const outside = (page: Page) =>
  fileFinding(
    'file/outside',
    page.span,
    'A text brings in only texts of its own folder and the folders in it.',
    'Put the text beside this one and say its name, as in bring in "gear/own.rig".',
  )

const loop = (page: Page, { path }: FilePlace) =>
  fileFinding(
    'file/loop',
    page.span,
    `"${path}" is being brought in already: the texts go round in a ring.`,
    'Strike out one of the "bring in" lines.',
  )

const again = (page: Page, { path }: FilePlace, first: Span | undefined): Finding => ({
  rule: 'file/twice',
  severity: 'note',
  at: page.span,
  message: `"${path}" is brought in twice; it is read once.`,
  remedy: 'Strike out this line.',
  related: first ? [{ at: first, message: 'it is first brought in here' }] : [],
})

const tooDeep = (page: Page) =>
  fileFinding(
    'file/too-deep',
    page.span,
    `Texts are brought in more than ${deepest} deep, or more than ${mostFiles} in all.`,
    'Bring them in from the vessel’s own text.',
  )

function notRead(
  page: Page,
  { shelf, path }: FilePlace,
  reading: Exclude<Reading, { kind: 'text' }>,
): Finding {
  const name = shelf === 'vessel' ? `"${path}"` : `the standard gear's "${path}"`
  return reading.kind === 'missing'
    ? fileFinding(
        'file/missing',
        page.span,
        `There is no text ${name} beside this one.`,
        'Mend the name, or put the text there.',
      )
    : fileFinding(
        'file/refused',
        page.span,
        `${name} can't be brought in: ${reading.because}.`,
        'Bring in a plain text file of this folder.',
      )
}
