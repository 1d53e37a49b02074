import { readFileSync, writeFileSync } from 'node:fs'
import { structuredPatch } from 'diff'
import { expect, it } from 'vitest'
import { linesOf, plainFindings } from '../../src/press/findings/index.ts'
import { compiledText } from '../support/compiled.ts'
import { type Notebook, notebookOf } from './notebook.ts'
import { plants } from './plants/index.ts'
import { seeded, someOf } from './seeded.ts'

// Kept to be read, as a bosun would read it: what is wrong, where in the text and on deck, why it matters, what to do.
const golden = new URL('../golden/messages.md', import.meta.url)

const schooner = notebookOf('schooner-pellow-finch')
const barque = notebookOf('barque-harrow-tansy')

const faults: readonly (readonly [string, Notebook])[] = [
  ['a berth left out', schooner],
  ['both of a pair led to port', schooner],
  ['a pair crossed', schooner],
  ['two lines on one pin', barque],
  ['two halyards sharing a pin', schooner],
  ['a pair on pins that are not opposite', barque],
  ['a pin beyond the rail', schooner],
  ['a line misspelt where it belays', barque],
  ["one sail's gear in another order", schooner],
  ['a sheet far from its clewline', schooner],
  ['a jib without downhaul', barque],
  ['a yard without braces', barque],
  ['a boom without topping lift', schooner],
  ['a fixed yard with a halyard', barque],
  ['a sheet not said to ease its clewline', schooner],
  ['a yard lowered on the one below', barque],
  ['a peak far off its gaff', schooner],
  ["a yard's halyard let go", schooner],
  ['a yard hoisted under hands', barque],
  ['too few hands at the stations', schooner],
]

/** The lines of the notebook that the fault changes, as they stood and as they stand. */
function change(before: string, after: string): string {
  const { hunks } = structuredPatch('', '', before, after, '', '', { context: 0 })
  return hunks.flatMap(({ lines }) => lines).join('\n')
}

/** What is found with the fault. The schooner has two halyards away from an end, and says why. */
function told(book: Notebook, text: string): string {
  const { findings, value } = compiledText(text, book.name)
  const fresh = findings.filter(
    ({ rule, severity }) => severity !== 'note' || rule !== 'belay/halyard-not-at-end',
  )
  return plainFindings(fresh, linesOf(value.rig.sources)).trimEnd()
}

const page = () => {
  const sections = faults.map(([kind, book], index) => {
    const [one] = someOf(plants[kind]?.(book) ?? [], 1, seeded(1805 + index))
    if (!one) throw new Error(`${kind} can't be planted in ${book.name}`)
    const changed = change(book.lines.join('\n'), one.text)
    return `## ${index + 1}. ${kind}\n\n${book.name}:\n\n\`\`\`diff\n${changed}\n\`\`\`\n\n\`\`\`\n${told(book, one.text)}\n\`\`\`\n`
  })
  return `# Twenty faults, and what is said of them\n\n${sections.join('\n')}`
}

it('twenty faults are told in these words', { timeout: 120_000 }, () => {
  const now = page()
  if (process.env['UPDATE_GOLDEN']) writeFileSync(golden, now)
  expect(readFileSync(golden, 'utf8')).toBe(now)
})
