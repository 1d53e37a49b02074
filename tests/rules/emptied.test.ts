import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { compile } from '../../src/compile.ts'
import { rules } from '../../src/rules/index.ts'
import { entryName, filesOf, readPage } from './page.ts'

// A rule that judges nothing would leave every rig sound: here it is asked by itself, with no other to stand in for it.
describe.each(rules)('the rule $slug', rule => {
  it('finds its own failing example', () => {
    const { fails } = readPage(rule.slug)
    if (!fails) throw new Error('its page has no failing example')
    const ship = compile(filesOf(fails), { name: entryName, text: fails.entry }).value
    expect([...rule.judge(ship)].length).toBeGreaterThan(0)
  })

  it('finds nothing in its mended one', () => {
    const { mended } = readPage(rule.slug)
    if (!mended) throw new Error('its page has no mended example')
    const ship = compile(filesOf(mended), { name: entryName, text: mended.entry }).value
    expect([...rule.judge(ship)]).toEqual([])
  })
})

it('every rule stands in the list, once, in a file of its own name', () => {
  const slugs = rules.map(({ slug }) => slug)
  expect(new Set(slugs).size).toBe(slugs.length)
  const folder = new URL('../../src/rules/', import.meta.url)
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).map(file =>
    file.replaceAll('\\', '/'),
  )
  expect(slugs.filter(slug => !files.includes(`${slug}.ts`))).toEqual([])
  const pages = files.filter(file => file.endsWith('.md')).map(file => file.slice(0, -'.md'.length))
  const ruleFiles = pages.filter(page => files.includes(`${page}.ts`))
  expect(ruleFiles.sort()).toEqual([...slugs].sort())
})
