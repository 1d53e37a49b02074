import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { compile } from '../../src/compile.ts'
import type { Finding } from '../../src/findings/index.ts'
import { rules } from '../../src/rules/index.ts'
import { paperFindings } from '../support/papers.ts'
import { type Example, entryName, filesOf, isMarked, marksOf, pages } from './page.ts'
import { unprintable } from './unprintable.ts'

/** What is found in an example; what is found only while papers are laid out, where its page is of that. */
function foundIn(example: Example, name: string): readonly Finding[] {
  const compiled = compile(filesOf(example), { name: entryName, text: example.entry })
  return name.startsWith('sheet/')
    ? [...compiled.findings, ...paperFindings(compiled.value)]
    : compiled.findings
}
const told = ({ severity, rule, message }: Finding) => `${severity} ${rule}: ${message}`

describe.each(pages)('the page $name', ({ name, slug, text }) => {
  it('bears the name of its check, and says why it matters, what to do, and from where it is known', () => {
    expect(slug).toBe(name)
    for (const heading of ['Why it matters aboard', 'What to do', 'Source', 'Fails']) {
      expect(text).toContain(`\n## ${heading}\n`)
    }
  })
})

const printed = pages.filter(({ name }) => !unprintable.has(name))

describe.each(printed)('the examples of $name', ({ name, severities, fails, mended }) => {
  it('fail where they say, and nowhere else', () => {
    if (!fails) throw new Error('no rig is fenced under "Fails"')
    const marks = marksOf(fails)
    const found = foundIn(fails, name)
    expect(marks.map(mark => mark.rule)).toContain(name)
    for (const mark of marks) {
      if (mark.rule === name) expect(severities).toContain(mark.severity)
      const here = found.filter(one => isMarked(one, mark, fails)).map(told)
      expect(here, `under line ${mark.line}: ${mark.message}`).not.toEqual([])
    }
    const unmarked = found.filter(one => !marks.some(mark => isMarked(one, mark, fails)))
    expect(unmarked.map(told)).toEqual([])
  })

  it('are sound when mended', () => {
    if (!mended) throw new Error('no rig is fenced under "Mended"')
    const left = foundIn(mended, name).filter(one => one.severity !== 'note' || one.rule === name)
    expect(left.map(told)).toEqual([])
  })
})

it.each([...unprintable])('%s is found where a page can only tell of it', (name, find) => {
  const page = pages.find(one => one.name === name)
  const found = find().find(one => one.rule === name)
  expect(page?.severities).toEqual([found?.severity])
})

it('every rule has a page that gives its severity', () => {
  for (const { slug, severity } of rules) {
    const page = pages.find(one => one.name === slug)
    expect(page?.severities[0], slug).toBe(severity)
  }
})

it('every check of the text, the rig and the papers has a page, and every page a check', () => {
  const folders = ['text', 'measure', 'syntax', 'rig', 'rules', 'sheets', 'reeve']
  const sources = folders.flatMap(folder => sourcesIn(new URL(`../../src/${folder}/`, import.meta.url)))
  const groups =
    'allow|balance|belay|boom|canvas|deck|file|lead|line|mast|measure|name|order|pair|rail|reach|sail|sheet|spar|station|stay|syntax|table|yard'
  const slug = new RegExp(`'((?:${groups})/[a-z]+(?:-[a-z0-9]+)*)'`, 'g')
  const found = sources.flatMap(source => [...source.matchAll(slug)].flatMap(([, name]) => name ?? []))
  const checks = [...new Set(found)].sort()
  expect(pages.map(page => page.name)).toEqual(checks)
})

function sourcesIn(folder: URL): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(file => file.endsWith('.ts'))
    .map(file => readFileSync(new URL(file, folder), 'utf8'))
}
