import { kilograms, metres, type Point3, point3 } from '../../measure/index.ts'
import { nameKey, type Statement } from '../../syntax/index.ts'
import { type Mast, onMast } from '../mast.ts'
import type { Boom, Spar, Yard } from '../spar.ts'
import { clause, isConjectural } from './clauses.ts'
import { mastOf } from './mast.ts'
import { coordinates } from './place.ts'
import { capitalised, finding, type Say } from './say.ts'

const kinds = ['yard', 'boom', 'gaff', 'bowsprit', 'spar'] as const

/** A spar from its entry; the last word of its name says what it is, unless that is said after a comma. */
export function buildSpar(entry: Statement, masts: readonly Mast[], say: Say): Spar | undefined {
  if (!entry.name) return undefined
  const key = nameKey(entry.name.words)
  const said = clause(entry, 'class')
  const kind = kindIn(said ? nameKey(said.name.words) : key)
  if (!kind) {
    const { words, span } = said?.name ?? entry.name
    say(
      finding('name/what-is-it', span, `The last word of "${words}" doesn't say what spar it is.`, {
        remedy:
          'Let the name end with yard, boom, gaff or bowsprit, as in "fore topsail yard"; or say it after a comma, as in "third batten, spar".',
      }),
    )
    return undefined
  }
  if (kind !== 'yard') return boomOf(entry, key, kind, masts)
  return clause(entry, 'fromTo') ? boomOf(entry, key, 'slung yard', masts) : yardOf(entry, key, masts)
}

const kindIn = (words: string) =>
  kinds.find(one => words === one || words.endsWith(` ${one}`)) ??
  (words.endsWith('boom') ? 'boom' : undefined)

function common(entry: Statement, name: string) {
  const thick = clause(entry, 'thick')?.measure.value
  const mass = clause(entry, 'measure')?.measure
  return {
    name,
    label: clause(entry, 'called')?.label.text ?? capitalised(entry.name?.words ?? name),
    diameter: thick === undefined ? undefined : metres(thick),
    mass: mass?.dimension === 'mass' ? kilograms(mass.value) : undefined,
    conjectural: isConjectural(entry),
    span: entry.name?.span ?? entry.span,
  }
}

function yardOf(entry: Statement, name: string, masts: readonly Mast[]): Yard {
  const mast = mastOf(name, undefined, masts)
  const hoist = clause(entry, 'hoistsFrom')
  const height = hoist ? (hoist.to ?? hoist.from).value : clause(entry, 'fixed')?.step.measure.value
  const lowered = hoist?.from.value ?? height
  const length = clause(entry, 'long')?.measure.value
  return {
    ...common(entry, name),
    kind: 'yard',
    mast: mast?.name,
    length: length === undefined ? undefined : metres(length),
    middle: height === undefined || !mast ? undefined : hungBefore(mast, height),
    hoists: hoist !== undefined,
    loweredHeight: lowered === undefined ? undefined : metres(lowered),
  }
}

function hungBefore(mast: Mast, height: number): Point3 | undefined {
  const axis = onMast(mast, height)
  return axis && point3(axis.x - mast.yardsForward, 0, height)
}

function boomOf(entry: Statement, name: string, kind: Boom['kind'], masts: readonly Mast[]): Boom {
  const extent = clause(entry, 'fromTo')
  const inner = extent && endOf(extent.from.steps)
  const outer = extent && endOf(extent.to.steps)
  const hoist = clause(entry, 'hoistsFrom')
  return {
    ...common(entry, name),
    kind,
    mast: mastOf(name, inner, masts)?.name,
    length: inner && outer && metres(Math.hypot(outer.x - inner.x, outer.y - inner.y, outer.z - inner.z)),
    inner,
    outer,
    hoists: hoist !== undefined,
    loweredHeight: hoist && metres(hoist.from.value),
    reefs: clause(entry, 'reefs')?.measures.map(({ value }) => metres(value)) ?? [],
  }
}

function endOf(steps: Parameters<typeof coordinates>[0]): Point3 | undefined {
  const { x, y, z } = coordinates(steps, 1)
  return x === undefined || z === undefined ? undefined : point3(x, y ?? 0, z)
}
