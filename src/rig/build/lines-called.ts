import { nameKey, type Statement } from '../../syntax/index.ts'
import { isPluralOf } from './kit.ts'
import type { LineNames } from './line-names.ts'
import { type Say, unknownName } from './say.ts'

/**
 * Pair keys of the lines that an entry calls: one by its name, "every royal halyard" all whose names end so, a sail's
 * name all that hang on it. A name that means nothing is told.
 */
export function linesCalled(
  { name }: Statement,
  names: LineNames,
  say: Say,
  sails: ReadonlyMap<string, readonly string[]> = new Map(),
): readonly string[] {
  if (!name) return []
  const key = nameKey(name.words)
  const ofSail = sails.get(key)
  if (ofSail) return ofSail
  const every = key.replace(/^every /, '')
  const found =
    every === key
      ? names.findAll(name)
      : names.offers().some(line => isPluralOf(`${every}s`, line))
        ? names.findAll({ ...name, words: `${every}s` })
        : []
  if (found.length === 0 && !names.isExcused(name)) say(unknownName('line', name, names.offers()))
  return found
}
