import { expect } from 'vitest'
import { compile } from '../../src/compile.ts'
import { entryName, filesOf, isMarked, marksIn } from './page.ts'

/**
 * Checks a rig in whose text every finding is drawn: a note stands under the place of each, as in
 * '#  ^ error belay/no-place: Jib downhaul is belayed nowhere.', and nothing else may be found.
 */
export function check(text: string): void {
  const example = { entry: text, beside: new Map() }
  const marks = marksIn(text, entryName)
  const { findings } = compile(filesOf(example), { name: entryName, text })
  const told = findings.map(({ severity, rule, message }) => `${severity} ${rule}: ${message}`)
  const unfound = marks.filter(mark => !findings.some(one => isMarked(one, mark, example)))
  const unmarked = findings.filter(one => !marks.some(mark => isMarked(one, mark, example)))
  expect({ unfound, unmarked: unmarked.map(({ rule, message }) => `${rule}: ${message}`), told }).toEqual({
    unfound: [],
    unmarked: [],
    told,
  })
}
