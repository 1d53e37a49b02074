import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { rules } from '../../src/rules/index.ts'
import { pages } from './page.ts'
import { chapters, type Row } from './rows.ts'

const file = new URL('../../src/rules/README.md', import.meta.url)
const severityOf = new Map(pages.map(({ name, severities }) => [name, severities.join(' or ')]))
const rows = chapters.flatMap(chapter => chapter.rows)
const standing = ({ by }: Row) => by.filter(slug => severityOf.has(slug))

/** Whether all there is to be seen is seen: a check named for later, or a reason, says that it is not. */
function stateOf(row: Row): string {
  const here = standing(row)
  if (row.merged) return `merged: ${row.merged}`
  if (row.undecidable) return `${here.length > 0 ? 'in part; not' : 'not'} to be told: ${row.undecidable}`
  if (here.length === 0) return `waits for ${row.waits}`
  // A reason with a colon waits for a part; one without is met as soon as its checks are here.
  const isPart = row.waits?.includes(': ') || here.length < row.by.length
  return row.waits && isPart ? `in part; waits: ${row.waits}` : 'done'
}

const link = (slug: string) => `[${slug}](${slug}.md) (${severityOf.get(slug)})`

const counts = () => {
  const of = (begins: string) => rows.filter(row => stateOf(row).startsWith(begins)).length
  const words = [
    [of('done'), 'are done'],
    [of('merged'), 'are merged into another'],
    [of('in part'), 'are done in part'],
    [of('not to be told'), "can't be told from a text"],
    [of('waits'), 'wait for figures'],
  ] as const
  return words.flatMap(([count, what]) => (count > 0 ? [`${count} ${what}`] : [])).join(', ')
}

const table = ({ title, rows: own }: (typeof chapters)[number]) =>
  [
    `## ${title}`,
    '',
    '| what a mate would see | check | how it stands |',
    '|---|---|---|',
    ...own.map(row => `| ${row.sees} | ${standing(row).map(link).join(', ') || '–'} | ${stateOf(row)} |`),
  ].join('\n')

/** Rules that judge what is none of the seventy, by themselves. */
const besides = () => {
  const named = new Set(rows.flatMap(({ by }) => by))
  const others = rules.map(({ slug }) => slug).filter(slug => !named.has(slug))
  const titleOf = (slug: string) => /^# (.+)$/m.exec(pages.find(({ name }) => name === slug)?.text ?? '')?.[1]
  return ['## Besides', '', ...others.map(slug => `- ${link(slug)}: ${titleOf(slug)}`)].join('\n')
}

const page = () => `# What is checked

The ${rows.length} faults that a mate would see on a chart, in a gear or in an order, and the checks that see them: ${counts()}.
Each check has a page that says why it matters aboard and what to do, with an example that fails and one that is
mended; \`crosstree explain\` prints them. Written anew by \`UPDATE_GOLDEN=1 npx vitest run tests/rules/seventy.test.ts\`.

${chapters.map(table).join('\n\n')}

${besides()}
`

describe('the page of all that is checked', () => {
  it('has seventy rows, each judged or with a reason why not', () => {
    expect(rows).toHaveLength(70)
    const silent = rows.filter(row => standing(row).length === 0 && !row.undecidable && !row.waits)
    expect(silent).toEqual([])
  })

  it('stands as it is told here', () => {
    if (process.env['UPDATE_GOLDEN']) writeFileSync(file, page())
    expect(readFileSync(file, 'utf8')).toBe(page())
  })
})
