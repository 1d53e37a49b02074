import { existsSync } from 'node:fs'
import { counted, type Mended, mended } from '../findings/index.ts'
import { changeOf, several } from '../press/findings/index.ts'
import type { Source } from '../text/index.ts'
import { type Checked, checkedTexts } from './checked.ts'
import { Complaint } from './complaint.ts'
import type { Entry } from './read-text.ts'
import { rewrite } from './rewrite.ts'

/** Writes to standard output what the fixes of the findings would change, as a unified diff. */
export function showFixes({ sources, findings }: Checked): void {
  const change = mended(sources.filter(isOurs), findings)
  for (const after of change.sources) {
    const before = sources.find(({ name }) => name === after.name)
    if (before) process.stdout.write(changeOf(before, after))
  }
}

/**
 * Makes the change that the fixes of the findings come to: judged anew first, and written only if it brings no new
 * error. Returns what is found in the texts as they are then.
 */
export function writeFixes(entries: readonly Entry[], checked: Checked): Checked {
  const change = mended(checked.sources.filter(isOurs), checked.findings)
  if (change.applied.length === 0) {
    process.stderr.write('nothing can be mended surely; the text is left as it is.\n')
    return checked
  }
  const after = checkedTexts(entries.map(entry => withTexts(entry, change.sources)))
  if (counted(after.findings).errors > counted(checked.findings).errors)
    throw new Complaint('the fixes together would bring a new error; nothing is written.')
  rewrite(
    change.sources.map(({ name, text }) => {
      const before = checked.sources.find(source => source.name === name)
      return { file: name, before: before?.text ?? '', after: text }
    }),
  )
  process.stderr.write(`${reportOf(change)}\n`)
  return after
}

/** The standard gear comes with the program; a text from standard input is shown its fixes under its name. */
const isOurs = ({ name }: Source) => !name.startsWith('standard gear/') || existsSync(name)

function withTexts({ read, files, ...entry }: Entry, changed: readonly Source[]): Entry {
  const texts = new Map(changed.map(source => [source.name, source]))
  const now = (source: Source) => texts.get(source.name) ?? source
  return {
    ...entry,
    read: { ...read, source: now(read.source) },
    files: {
      read: place => {
        const reading = files.read(place)
        return reading.kind === 'text' ? { ...reading, source: now(reading.source) } : reading
      },
    },
  }
}

function reportOf({ sources, applied, left }: Mended): string {
  const where = sources.map(({ name }) => name).join(', ')
  const more = left.length > 0 ? `, and ${left.length} left for another run` : ''
  return `${several(applied.length, 'mend')} made in ${where}${more}.`
}
