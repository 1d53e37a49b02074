import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { compile } from '../../src/compile.ts'
import type { Finding } from '../../src/findings/index.ts'
import { rules } from '../../src/rules/index.ts'
import { type Example, entryName, filesOf, isMarked, marksOf, pages } from './page.ts'

const compiled = (example: Example) =>
  compile(filesOf(example), { name: entryName, text: example.entry }).findings
const told = ({ severity, rule, message }: Finding) => `${severity} ${rule}: ${message}`

describe.each(pages)('the page $name', ({ name, slug, text, severities, fails, mended }) => {
  it('bears the name of its check, and says what it finds, why, what to do, and from where', () => {
    expect(slug).toBe(name)
    for (const heading of ['Why it matters aboard', 'What to do', 'Source'])
      expect(text).toContain(`\n## ${heading}\n`)
  })

  it('has an example that fails where it says, and nowhere else', () => {
    if (!fails) throw new Error('no rig is fenced under "Fails"')
    const marks = marksOf(fails)
    const found = compiled(fails)
    expect(marks.map(mark => mark.rule)).toContain(name)
    for (const mark of marks) {
      if (mark.rule === name) expect(severities).toContain(mark.severity)
      expect(
        found.filter(one => isMarked(one, mark, fails)).map(told),
        `under line ${mark.line}`,
      ).not.toEqual([])
    }
    const unmarked = found.filter(one => !marks.some(mark => isMarked(one, mark, fails)))
    expect(unmarked.map(told)).toEqual([])
  })

  it('has an example that is mended, and sound', () => {
    if (!mended) throw new Error('no rig is fenced under "Mended"')
    expect(
      compiled(mended)
        .filter(one => one.severity !== 'note' || one.rule === name)
        .map(told),
    ).toEqual([])
  })
})

it('every rule has a page that gives its severity', () => {
  for (const { slug, severity } of rules) {
    const page = pages.find(one => one.name === slug)
    expect(page?.severities[0], slug).toBe(severity)
  }
})

it('every check of the syntax and the builder has a page', () => {
  const sources = ['syntax', 'rig', 'rules'].flatMap(folder =>
    sourcesIn(new URL(`../../src/${folder}/`, import.meta.url)),
  )
  const slugs = new Set(
    sources.flatMap(source =>
      [...source.matchAll(/'((?:[a-z]+)\/(?:[a-z]+(?:-[a-z]+)*))'/g)].map(([, slug]) => slug),
    ),
  )
  const groups = new Set(pages.map(page => page.name.split('/')[0]))
  const checks = [...slugs].filter(slug => groups.has(slug?.split('/')[0]))
  expect(checks.length).toBeGreaterThan(rules.length)
  expect(checks.filter(slug => !pages.some(page => page.name === slug))).toEqual([])
})

function sourcesIn(folder: URL): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(file => file.endsWith('.ts'))
    .map(file => readFileSync(new URL(file, folder), 'utf8'))
}
