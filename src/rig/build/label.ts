import { type Point3, point3 } from '../../measure/index.ts'
import { nameKey, type Page, type Statement } from '../../syntax/index.ts'
import { clause, clausesOf } from './clauses.ts'
import { isPluralOf } from './kit.ts'
import type { LineNames } from './line-names.ts'
import { coordinates } from './place.ts'
import { type Say, unknownName } from './say.ts'

/** Printed names that the text gives apart, by pair key of a line or name of another thing. */
export type Labels = ReadonlyMap<string, Said>

interface Said {
  readonly label: string | undefined
  readonly short: string | undefined
  readonly nicknames: readonly string[]
  /** Where a sail's name had best stand on the sail plan. */
  readonly at: Point3 | undefined
}

/** What a label may be of. */
export interface Known {
  readonly names: LineNames
  readonly things: readonly string[]
}

/**
 * Reads the pages of labels. Labels in other languages are checked, and kept for papers in those languages; the
 * ship's own are returned.
 */
export function labelsOf(pages: readonly Page[], known: Known, say: Say): Labels {
  const labels = new Map<string, Said>()
  for (const page of pages) {
    if (page.kind !== 'labels') continue
    for (const entry of page.block) {
      if (!entry.name) continue
      const keys = keysOf(entry.name, known)
      if (keys.length === 0 && !known.names.isExcused(entry.name))
        say(unknownName('thing', entry.name, [...known.things, ...known.names.offers()]))
      if (clause(page, 'in')) continue
      const label = clause(entry, 'label')?.label.text ?? clause(entry, 'called')?.label.text
      const short = clause(entry, 'short')?.label.text
      const nicknames = clausesOf(entry, 'nicknamed').flatMap(one => one.names.map(({ text }) => text))
      const at = placeOf(entry)
      for (const key of keys) labels.set(key, { label, short, nicknames, at })
    }
  }
  return labels
}

function placeOf(entry: Statement): Point3 | undefined {
  const { x, z } = coordinates(clause(entry, 'at')?.place.steps ?? [], 0)
  return x === undefined || z === undefined ? undefined : point3(x, 0, z)
}

/** Pair keys of the lines, or the name of the thing, that a label is of. */
export function keysOf(name: Parameters<LineNames['find']>[0], { names, things }: Known): readonly string[] {
  const key = nameKey(name.words)
  const every = key.replace(/^every /, '')
  if (every !== key) {
    return names.offers().some(line => isPluralOf(`${every}s`, line))
      ? names.findAll({ ...name, words: `${every}s` })
      : []
  }
  const line = names.find(name)
  if (line) return [line.pairKey]
  return things.includes(key) ? [key] : []
}

interface Labelled {
  readonly label: string
}

/** A thing with the label the text gives it apart, where it does. */
export function labelled<T extends Labelled & ({ readonly name: string } | { readonly pairKey: string })>(
  thing: T,
  labels: Labels,
): T {
  const said = labels.get('pairKey' in thing ? thing.pairKey : thing.name)
  if (!said) return thing
  return {
    ...thing,
    label: said.label ?? thing.label,
    ...(said.short === undefined ? {} : { short: said.short }),
    ...(said.nicknames.length === 0 ? {} : { nicknames: said.nicknames }),
    ...(said.at && 'nameAt' in thing ? { nameAt: said.at } : {}),
  }
}
