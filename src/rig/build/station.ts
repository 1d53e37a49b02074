import { nameKey, type Statement } from '../../syntax/index.ts'
import type { Rail } from '../rail.ts'
import type { Station } from '../station.ts'
import { clause, clausesOf } from './clauses.ts'
import type { LineNames } from './line-names.ts'
import { capitalised, namesIn, type Say, unknownName } from './say.ts'

/** A station from its entry: its hands, and the rails and lines it works. */
export function buildStation(
  entry: Statement,
  rails: readonly Rail[],
  names: LineNames,
  stations: readonly string[],
  say: Say,
): Station {
  const offers = () => [...rails.map(rail => rail.name), ...names.offers()]
  const works = clausesOf(entry, 'works').flatMap(one => one.names)
  const codes: string[] = []
  const lines: string[] = []
  for (const name of works) {
    const key = nameKey(name.words)
    const code = key.replaceAll(' ', '-')
    const named = rails.filter(rail => rail.name === key || rail.code.toLowerCase() === code)
    const found = named.length > 0 ? [] : names.findAll(name)
    codes.push(...named.map(rail => rail.code))
    lines.push(...found)
    if (named.length === 0 && found.length === 0 && !names.isExcused(name)) {
      say(unknownName('rail or line', name, offers()))
      const meant = new Set(namesIn(name.words, offers()))
      codes.push(...rails.filter(rail => meant.has(rail.name)).map(rail => rail.code))
    }
  }
  return {
    name: nameKey(entry.name?.words ?? ''),
    label: clause(entry, 'called')?.label.text ?? capitalised(entry.name?.words ?? ''),
    ...hands(entry),
    rails: codes,
    lines,
    mannedBy: mannedBy(entry, stations, say),
    takes: clausesOf(entry, 'takes').flatMap(one => one.names.map(name => name.words)),
    span: entry.name?.span ?? entry.span,
  }
}

/** "3 hands in a watch, 9 in all". */
function hands(entry: Statement): Pick<Station, 'handsInWatch' | 'handsInAll'> {
  const musters = clausesOf(entry, 'muster')
  const inWatch = musters.find(({ in: of }) => nameKey(of.words).endsWith('watch'))
  const inAll = musters.find(({ in: of }) => nameKey(of.words) === 'all')
  return { handsInWatch: inWatch?.count.value, handsInAll: inAll?.count.value }
}

function mannedBy(entry: Statement, stations: readonly string[], say: Say): readonly string[] {
  return clausesOf(entry, 'mannedBy').flatMap(({ names }) =>
    names.flatMap(name => {
      const key = nameKey(name.words)
      if (stations.includes(key)) return [key]
      say(unknownName('station', name, stations))
      return []
    }),
  )
}
