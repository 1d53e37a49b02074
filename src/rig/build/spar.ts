import { kilograms, metres, type Point3, point3, radians } from '../../measure/index.ts'
import { nameKey, type Place, type Statement } from '../../syntax/index.ts'
import { type Mast, onMast } from '../mast.ts'
import type { Boom, Spar, StuddingsailBoom, Yard } from '../spar.ts'
import { clause, clausesOf, conjectureOf } from './clauses.ts'
import { mastOf } from './mast.ts'
import { coordinates, locate } from './place.ts'
import { capitalised, finding, type Say, unknownName } from './say.ts'
import { mastsThing } from './thing.ts'

const kinds = ['yard', 'studdingsail boom', 'boom', 'gaff', 'bowsprit', 'spar'] as const

/** The spars of a text. A boom that lies along a yard is said after it. */
export function buildSpars(entries: readonly Statement[], masts: readonly Mast[], say: Say): readonly Spar[] {
  const spars: Spar[] = []
  for (const entry of entries) {
    const spar = buildSpar(entry, masts, spars, say)
    if (spar) spars.push(spar)
  }
  return spars
}

/** A spar from its entry; the last word of its name says what it is, unless that is said after a comma. */
function buildSpar(
  entry: Statement,
  masts: readonly Mast[],
  spars: readonly Spar[],
  say: Say,
): Spar | undefined {
  if (!entry.name) return undefined
  const key = nameKey(entry.name.words)
  const said = clausesOf(entry, 'class').findLast(({ name }) => kindIn(nameKey(name.words)))
  const kind = kindIn(said ? nameKey(said.name.words) : key)
  if (!kind) {
    const { words, span } = clause(entry, 'class')?.name ?? entry.name
    say(
      finding('name/what-is-it', span, `The last word of "${words}" doesn't say what spar it is.`, {
        remedy:
          'Let the name end with yard, boom, gaff or bowsprit, as in "fore topsail yard"; or say it after a comma, as in "mizzen sprit, spar".',
      }),
    )
    return undefined
  }
  if (kind === 'studdingsail boom') return studdingsailBoom(entry, key, spars, say)
  if (kind !== 'yard') return boomOf(entry, key, kind, masts)
  return clause(entry, 'fromTo')
    ? boomOf(entry, key, 'slung yard', masts)
    : yardOf(entry, key, mastOfYard(entry, key, masts, say))
}

/** The mast a yard says it is on, else the one whose word its name begins with. */
function mastOfYard(entry: Statement, key: string, masts: readonly Mast[], say: Say): Mast | undefined {
  const [said] = clause(entry, 'on')?.names ?? []
  const mast = said
    ? masts.find(one => [one.name, one.word].includes(nameKey(said.words)))
    : mastOf(key, undefined, masts)
  const names = masts.map(one => one.name)
  if (said && !mast) say(unknownName('mast', said, names, [key]))
  else if (!mast && entry.name && masts.length > 0) {
    say(
      finding('yard/no-mast', entry.name.span, `It isn't said which mast the ${entry.name.words} crosses.`, {
        aboard: 'A yard without a mast has no place, and neither has its sail.',
        remedy: `Say "on ${names[0]}", or begin its name with the mast's word.`,
        explains: [key],
      }),
    )
  }
  return mast
}

/** 'fore topmast studdingsail boom, on fore yard to 13.80 m out, 9.40 m long'. */
function studdingsailBoom(
  entry: Statement,
  name: string,
  spars: readonly Spar[],
  say: Say,
): StuddingsailBoom | undefined {
  const [on] = clause(entry, 'on')?.names ?? []
  const yards = spars.filter((spar): spar is Yard => spar.kind === 'yard')
  const yard = on && yards.find(one => one.name === nameKey(on.words))
  if (!yard) {
    const names = yards.map(one => one.name)
    say(
      on
        ? unknownName('yard above', on, names, [name])
        : finding(
            'sail/bent-to-nothing',
            entry.name?.span ?? entry.span,
            `It isn't said what yard the ${name} lies along.`,
            {
              remedy: 'Say "on" and the yard, as in "on fore yard to 13.80 m out".',
              explains: [name],
            },
          ),
    )
    return undefined
  }
  const length = clause(entry, 'long')?.measure.value
  const end = coordinates(clause(entry, 'leadTo')?.place.steps ?? [], 1).y
  const at = (y: number | undefined) =>
    y === undefined || !yard.middle ? undefined : point3(yard.middle.x, y, yard.middle.z)
  return {
    ...common(entry, name),
    kind: 'studdingsail boom',
    mast: yard.mast,
    length: length === undefined ? undefined : metres(length),
    yard: yard.name,
    inner: at(end === undefined || length === undefined ? undefined : end - length),
    outer: at(end),
  }
}

const kindIn = (words: string) =>
  kinds.find(one => words === one || words.endsWith(` ${one}`)) ??
  (words.endsWith('boom') ? 'boom' : undefined)

function common(entry: Statement, name: string) {
  const thick = clause(entry, 'thick')?.measure.value
  const mass = clause(entry, 'measure')?.measure
  const walls = clause(entry, 'walls')?.measure.value
  return {
    name,
    label: clause(entry, 'called')?.label.text ?? capitalised(entry.name?.words ?? name),
    diameter: thick === undefined ? undefined : metres(thick),
    mass: mass?.dimension === 'mass' ? kilograms(mass.value) : undefined,
    material: materialOf(entry),
    walls: walls === undefined ? undefined : metres(walls),
    ...conjectureOf(entry),
    span: entry.name?.span ?? entry.span,
  }
}

/** Of what is said after commas, that which is no kind of spar: 'fore yard, Douglas fir'. */
const materialOf = (entry: Statement): string | undefined =>
  clausesOf(entry, 'class')
    .map(({ name }) => nameKey(name.words))
    .findLast(words => !kindIn(words))

function yardOf(entry: Statement, name: string, mast: Mast | undefined): Yard {
  const hoist = clause(entry, 'hoistsFrom')
  const height = hoist ? (hoist.to ?? hoist.from).value : clause(entry, 'fixed')?.step.measure.value
  const lowered = hoist?.from.value ?? height
  const length = clause(entry, 'long')?.measure.value
  const braces = clause(entry, 'bracesTo')?.angle.value
  return {
    kind: 'yard',
    mast: mast?.name,
    length: length === undefined ? undefined : metres(length),
    middle: height === undefined || !mast ? undefined : hungBefore(mast, height),
    hoists: hoist !== undefined,
    loweredHeight: lowered === undefined ? undefined : metres(lowered),
    bracesTo: braces === undefined ? undefined : radians(braces),
    ...common(entry, name),
  }
}

function hungBefore(mast: Mast, height: number): Point3 | undefined {
  const axis = onMast(mast, height)
  return axis && point3(axis.x - mast.yardsForward, 0, height)
}

function boomOf(entry: Statement, name: string, kind: Boom['kind'], masts: readonly Mast[]): Boom {
  const extent = clause(entry, 'fromTo')
  const inner = extent && endOf(extent.from, name, masts)
  const outer = extent && endOf(extent.to, name, masts)
  const hoist = clause(entry, 'hoistsFrom')
  const mast = mastOf(name, inner, masts)
  return {
    kind,
    mast: mast?.name,
    length: inner && outer && metres(Math.hypot(outer.x - inner.x, outer.y - inner.y, outer.z - inner.z)),
    inner,
    outer,
    slings: kind === 'slung yard' && inner && outer ? slingsOf(inner, outer, mast) : undefined,
    hoists: hoist !== undefined,
    loweredHeight: hoist && metres(hoist.from.value),
    reefs: clause(entry, 'reefs')?.measures.map(({ value }) => metres(value)) ?? [],
    ...common(entry, name),
  }
}

/** Where a slung yard crosses its mast's centre line; half way along it where the mast isn't given. */
function slingsOf(inner: Point3, outer: Point3, mast: Mast | undefined): Point3 {
  const rake = Math.tan(mast?.rake ?? 0)
  const across = outer.x - inner.x - rake * (outer.z - inner.z)
  const met =
    mast?.foot && across !== 0 ? (mast.foot.x - inner.x + rake * (inner.z - mast.foot.z)) / across : 0.5
  const share = Math.min(1, Math.max(0, met))
  return point3(inner.x + (outer.x - inner.x) * share, 0, inner.z + (outer.z - inner.z) * share)
}

/** One end: in the ship's axes, or counted from a mast, as in "mast 0.40 m aft 1.60 m up". */
function endOf(end: Place, name: string, masts: readonly Mast[]): Point3 | undefined {
  const at = locate(end, { outward: 1, thing: mastsThing(name, masts) })
  return at.known ? at.value : undefined
}
