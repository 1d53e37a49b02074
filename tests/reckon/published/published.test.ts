import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { pageOf } from './page.ts'
import { ropes } from './ropes.ts'
import { difference, isMet, type PublishedRow, type Topic } from './row.ts'
import { runningRigging } from './running-rigging.ts'
import { sails } from './sails.ts'
import { spars, weights } from './spars.ts'
import { stability } from './stability.ts'
import { stations } from './stations.ts'
import { tackles } from './tackles.ts'
import { winds } from './winds.ts'

const topics: readonly Topic[] = [
  tackles,
  ropes,
  runningRigging,
  sails,
  spars,
  weights,
  winds,
  stability,
  stations,
]

describe.each(topics)('$title', ({ rows }) => {
  test.each(rows.map(row => [nameOf(row), row] as const))('%s', (_name, row) => {
    expect(isMet(row), `published ${row.published}, computed ${row.computed} (${difference(row)})`).toBe(true)
  })
})

function nameOf({ fact, source, status }: PublishedRow): string {
  const from = { 'from memory': 'from memory: ', 'second-hand': 'second-hand: ' } as Record<string, string>
  return `${from[status] ?? ''}${fact}; ${source}`
}

test('no figure stands twice', () => {
  const names = topics.flatMap(({ rows }) => rows.map(nameOf))
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([])
})

// UPDATE_GOLDEN=1 writes the page anew.
test('the page beside the code says what the tests found', () => {
  const file = new URL('../../../src/reckon/published.md', import.meta.url)
  const page = pageOf(topics)
  if (process.env.UPDATE_GOLDEN === '1') writeFileSync(file, page)
  expect(readFileSync(file, 'utf8')).toBe(page)
})
