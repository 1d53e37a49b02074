import { metres, type Point3, point3, radians } from '../../measure/index.ts'
import { type Name, nameKey, type Statement } from '../../syntax/index.ts'
import { type Mast, type MastSection, onMast, type Platform } from '../mast.ts'
import { clause, clausesOf, conjectureOf } from './clauses.ts'
import { coordinates } from './place.ts'
import { capitalised } from './say.ts'

/** A mast from its entry: where it is stepped, its rake, and its sections from the deck up. */
export function buildMast(entry: Statement): Mast {
  const name = nameKey(entry.name?.words ?? '')
  const rake = clause(entry, 'raked')
  const yards = coordinates(clause(entry, 'yards')?.steps ?? [], 0).x
  const mast = {
    name,
    word: name.replace(/ mast$/, ''),
    label: capitalised(clause(entry, 'called')?.label.text ?? entry.name?.words ?? ''),
    foot: footOf(entry),
    rake: radians(rake ? rake.angle.value * (rake.forward ? -1 : 1) : 0),
    yardsForward: metres(yards === undefined ? 0 : -yards),
    sections: [],
    platforms: [],
    hasShrouds: !clausesOf(entry, 'without').some(({ names }) => names.some(isShrouds)),
    ...conjectureOf(entry),
    span: entry.name?.span ?? entry.span,
  }
  const platforms = entry.block.filter(one => platformKind(one))
  const sections = entry.block.filter(one => one.name && !platformKind(one))
  return { ...mast, sections: sectionsOf(mast, sections), platforms: platforms.flatMap(platformOf) }
}

const isShrouds = ({ words }: Name) => nameKey(words) === 'shrouds'

function footOf(entry: Statement): Point3 | undefined {
  const { x, z } = coordinates(clause(entry, 'stepped')?.place.steps ?? [], 0)
  return x === undefined || z === undefined ? undefined : point3(x, 0, z)
}

/** Each section stands from the head of the one below, less the doubling, up to the height said. */
function sectionsOf(mast: Mast, entries: readonly Statement[]): readonly MastSection[] {
  const sections: MastSection[] = []
  for (const entry of entries) {
    const height = coordinates(clause(entry, 'leadTo')?.place.steps ?? [], 0).z
    const doubling = clause(entry, 'doubled')?.measure.value ?? 0
    const below = sections.at(-1)
    const foot = below ? below.head && onMast(mast, below.head.z - doubling) : mast.foot
    const thick = clause(entry, 'thick')?.measure.value
    sections.push({
      name: nameKey(entry.name?.words ?? ''),
      foot,
      head: height === undefined ? undefined : onMast(mast, height),
      diameter: thick === undefined ? undefined : metres(thick),
      doubling: metres(doubling),
      span: entry.name?.span ?? entry.span,
    })
  }
  return sections
}

function platformKind(entry: Statement): Platform['kind'] | undefined {
  const last = nameKey(entry.name?.words ?? '')
    .split(' ')
    .at(-1)
  return last === 'top' || last === 'crosstrees' ? last : undefined
}

function platformOf(entry: Statement): readonly Platform[] {
  const kind = platformKind(entry)
  const width = clause(entry, 'wide')?.measure.value
  const height = coordinates(clause(entry, 'coords')?.steps ?? [], 0).z
  if (!kind || width === undefined || height === undefined) return []
  return [{ kind, width: metres(width), height: metres(height), span: entry.span }]
}

/** The whole name of a mast's section: 'fore topmast'; of a vessel's only mast, called "mast", its own: 'topmast'. */
export const sectionKey = ({ word }: Mast, section: MastSection): string =>
  word === 'mast' ? section.name : nameKey(`${word} ${section.name}`)

/**
 * The mast a thing belongs to: the one its name begins with ("fore topsail yard", "foresail boom"), else the
 * nearest one at its height.
 */
export function mastOf(name: string, at: Point3 | undefined, masts: readonly Mast[]): Mast | undefined {
  const key = nameKey(name)
  const named = masts
    .filter(mast => key.startsWith(mast.word))
    .sort((a, b) => b.word.length - a.word.length)[0]
  if (named || !at) return named
  let near: Mast | undefined
  let least = Number.POSITIVE_INFINITY
  for (const mast of masts) {
    const axis = onMast(mast, at.z)
    if (!axis || Math.abs(axis.x - at.x) >= least) continue
    near = mast
    least = Math.abs(axis.x - at.x)
  }
  return near
}
