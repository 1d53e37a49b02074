import { createTwoFilesPatch } from 'diff'
import type { Source } from '../../text/index.ts'
import { oneLine } from './plain.ts'

/** The change from one text to another as a unified diff, as `patch` takes it; empty where they are alike. */
export function changeOf(before: Source, after: Source): string {
  if (before.text === after.text) return ''
  const name = oneLine(before.name)
  const patch = createTwoFilesPatch(name, name, before.text, after.text)
  // What stands above the names is for another program's sake.
  return patch.slice(patch.indexOf('--- '))
}
