import { metres, type Point3, point3 } from '../../measure/index.ts'
import { type Name, nameKey, type Statement } from '../../syntax/index.ts'
import { nearest } from '../../text/index.ts'
import type {
  Cloth,
  Corner,
  ForeAndAftSail,
  Reef,
  Sail,
  SquareSail,
  Studdingsail,
  StuddingsailCorner,
} from '../sail.ts'
import { clause, conjectureOf } from './clauses.ts'
import { mastOf, sectionKey } from './mast.ts'
import { coordinates, type Ground, locate } from './place.ts'
import { capitalised, finding, listed, namesIn, type Say, unknownName } from './say.ts'
import { foreAndAftThings, type Surroundings } from './thing.ts'

/** The classes of square sails, lowest first; 'square' may go before each but the last. */
export const squareClasses = [
  'course',
  'topsail',
  'lower topsail',
  'upper topsail',
  'topgallant',
  'lower topgallant',
  'upper topgallant',
  'royal',
  'skysail',
  'square sail',
] as const
/** The classes of sails set fore and aft. */
export const foreAndAftClasses = [
  'headsail',
  'staysail',
  'gaff sail',
  'gaff topsail',
  'lugsail',
  'lateen sail',
  'fore-and-aft sail',
] as const

/** Canvas hangs this far before the middle of its yard (common practice, no source). */
const beforeYard = 0.1

/** A sail from its entry, or undefined where it can't be told what kind it is. */
export function buildSail(entry: Statement, around: Surroundings, say: Say): Sail | undefined {
  const { name } = entry
  if (!name) return undefined
  const said = clause(entry, 'class')
  if (said && isKind(said.name.words)) return ofKind(said.name.words, entry, name, around, say)
  const run = said ? undefined : runIn(name)
  const bearers = (clause(entry, 'on')?.names ?? []).map(one => nameKey(one.words))
  const explains = run ? [] : [nameKey(name.words), ...bearers]
  say(
    said
      ? unknownName('kind of sail', said.name, kinds, explains)
      : finding('sail/kind-missing', name.span, `It isn't said what kind of sail the ${name.words} is.`, {
          remedy: `Say it after a comma: ${listed(kinds)}.`,
          explains,
          ...run?.told,
        }),
  )
  return run && ofKind(run.kind, entry, run.name, around, say)
}

const kinds = [
  ...squareClasses.map(one => (one === 'square sail' ? one : `square ${one}`)),
  ...foreAndAftClasses,
  'studdingsail',
]

/** A square sail's class may be said by itself: "course", "square course". */
const classIn = (kind: string) => nameKey(kind).replace(/^square (?!sail$)/, '')
const classes = new Set([...squareClasses, ...foreAndAftClasses, 'studdingsail'].map(nameKey))
const isKind = (words: string) => classes.has(classIn(words))

function ofKind(
  kind: string,
  entry: Statement,
  name: Name,
  around: Surroundings,
  say: Say,
): Sail | undefined {
  const words = classIn(kind)
  const square = squareClasses.find(one => one === words)
  if (square) return squareSail(entry, name, square, around, say)
  const foreAndAft = foreAndAftClasses.find(one => nameKey(one) === words)
  if (foreAndAft) return foreAndAftSail(entry, name, foreAndAft, around, say)
  return words === 'studdingsail' ? studdingsail(entry, name, around, say) : undefined
}

/** A kind that stands at the end of a name without a comma, as in 'main topsail gaff topsail', and what is told of it. */
function runIn(whole: Name) {
  const { words, span } = whole
  const kind = kinds.find(one => nameKey(words).endsWith(` ${one}`))
  if (!kind || span.end - span.start !== words.length) return undefined
  const bare = words.slice(0, -kind.length - 1)
  const at = { ...span, start: span.start + bare.length, end: span.start + bare.length }
  const remedy = `Put a comma before its kind: "${bare}, ${kind}". It is read so.`
  const fix = { title: 'Put a comma before its kind', edits: [{ at, text: ',' }] }
  return { kind, name: { ...whole, words: bare }, told: { remedy, fix } }
}

function common(entry: Statement, name: Name) {
  return {
    name: nameKey(name.words),
    label: clause(entry, 'called')?.label.text ?? capitalised(name.words),
    short: clause(entry, 'short')?.label.text,
    foreign: false,
    nameAt: undefined,
    gear: undefined,
    shackled: [],
    toSet: undefined,
    toDouse: undefined,
    reefs: reefsOf(entry),
    cloth: clothOf(entry),
    ...conjectureOf(entry),
    span: name.span,
  }
}

/** 'number 2 canvas', 'number 2 navy flax, 24 in wide'. */
function clothOf(entry: Statement): Cloth {
  const said = clause(entry, 'cloth')
  const width = clause(entry, 'wide')?.measure.value
  const list = said && nameKey(said.of.words)
  return {
    number: said?.number.value,
    list: list === 'canvas' ? undefined : list,
    width: width === undefined ? undefined : metres(width),
  }
}

function squareSail(
  entry: Statement,
  name: Name,
  kind: SquareSail['class'],
  around: Surroundings,
  say: Say,
): SquareSail | undefined {
  const [on] = clause(entry, 'on')?.names ?? []
  const yard = on && around.spars.get(nameKey(on.words))
  if (yard?.kind !== 'yard') {
    say(noSpar(name, on, 'yard', around))
    return undefined
  }
  const foot = clause(entry, 'sheeted')?.to
  const footYard = foot && around.spars.get(nameKey(foot.words))
  if (foot && !footYard) say(unknownName('yard', foot, yardNames(around)))
  return {
    kind: 'square',
    class: kind,
    mast: yard.mast,
    yard: yard.name,
    footYard: footYard?.name,
    x: yard.middle && metres(yard.middle.x - beforeYard),
    head: widthAndHeight(particular(entry, 'head')),
    foot: widthAndHeight(particular(entry, 'foot')),
    roach: metres(clause(particular(entry, 'foot') ?? entry, 'roach')?.measure.value ?? 0),
    ...common(entry, name),
  }
}

const yardNames = (around: Surroundings) =>
  [...around.spars.values()].filter(spar => spar.kind === 'yard').map(spar => spar.name)

function noSpar(sail: Name, on: Name | undefined, what: string, around: Surroundings) {
  const explains = [nameKey(sail.words)]
  if (on)
    return unknownName(what, on, yardNames(around), [...explains, ...nearest(on.words, yardNames(around), 1)])
  return finding('sail/bent-to-nothing', sail.span, `It isn't said what the ${sail.words} is bent to.`, {
    remedy: `Say "on" and the ${what}, as in "square course on fore yard".`,
    explains,
  })
}

const particular = (entry: Statement, key: string) =>
  entry.block.find(one => one.kind === 'corner' && nameKey(one.name?.words ?? '') === key)

function widthAndHeight(edge: Statement | undefined): SquareSail['head'] {
  const width = edge && clause(edge, 'wide')?.measure.value
  const height = edge && coordinates(clause(edge, 'coords')?.steps ?? [], 0).z
  return width === undefined || height === undefined
    ? undefined
    : { width: metres(width), height: metres(height) }
}

function reefsOf(entry: Statement): readonly Reef[] {
  return entry.block.flatMap(one => {
    const offset = clause(one, 'offset')
    if (one.kind !== 'corner' || nameKey(one.name?.words ?? '') !== 'reef' || !offset) return []
    const out = coordinates(clause(one, 'cringle')?.steps ?? [], 1).y
    return [
      {
        depth: metres(offset.measure.value),
        from: offset.side === 'above' ? ('foot' as const) : ('head' as const),
        cringleOut: out === undefined ? undefined : metres(out),
        span: one.span,
      },
    ]
  })
}

/** In order round the sail; it has those of them that the text gives. */
function cornerNames(kind: ForeAndAftSail['class']): readonly Corner['name'][] {
  switch (kind) {
    case 'headsail':
    case 'staysail':
      return ['tack', 'clew', 'head']
    case 'gaff sail':
    case 'lugsail':
      return ['tack', 'clew', 'peak', 'throat']
    case 'gaff topsail':
    case 'lateen sail':
    case 'fore-and-aft sail':
      return ['tack', 'clew', 'head', 'peak', 'throat']
  }
}

function foreAndAftSail(
  entry: Statement,
  name: Name,
  kind: ForeAndAftSail['class'],
  around: Surroundings,
  say: Say,
): ForeAndAftSail {
  const keys = thereOf(entry, name, around, say)
  const sheeted = clause(entry, 'sheeted')?.to
  const sheetedTo = sheeted && around.spars.get(nameKey(sheeted.words))
  if (sheeted && !sheetedTo) say(unknownName('spar', sheeted, around.spars.keys()))
  const bearer = keys.map(key => around.spars.get(key)?.mast).find(Boolean)
  const hung = cornerAt(particular(entry, 'head') ?? particular(entry, 'throat'))
  const stay = keys.map(key => around.stays.get(key)?.from).find(Boolean)
  const bare: ForeAndAftSail = {
    kind: 'fore-and-aft',
    class: kind,
    mast: bearer ?? mastOf(keys[0] ?? name.words, stay ?? hung, around.masts)?.name,
    on: keys,
    sheetedTo: sheetedTo?.name,
    corners: [],
    ...common(entry, name),
  }
  const thing = foreAndAftThings(bare, around)
  const corners = cornerNames(kind).flatMap((corner): Corner[] => {
    const at = cornerAt(particular(entry, corner), key => thing(key, 0))
    return at ? [{ name: corner, at }] : []
  })
  return { ...bare, corners }
}

const studdingsailCorners = ['clew', 'tack', 'outer head', 'inner head'] as const

/** 'fore topmast studdingsail, studdingsail on fore upper topsail yard and fore topmast studdingsail boom'. */
function studdingsail(entry: Statement, name: Name, around: Surroundings, say: Say): Studdingsail {
  const on = thereOf(entry, name, around, say)
  const yard = on.map(key => around.spars.get(key)).find(spar => spar?.kind === 'yard')
  const x = yard?.middle && metres(yard.middle.x - beforeYard)
  const corners = studdingsailCorners.flatMap((corner): StuddingsailCorner[] => {
    const { y, z } = coordinates(clause(particular(entry, corner) ?? entry, 'coords')?.steps ?? [], 1)
    return x === undefined || y === undefined || z === undefined
      ? []
      : [{ name: corner, at: point3(x, y, z) }]
  })
  return {
    ...common(entry, name),
    kind: 'studdingsail',
    class: 'studdingsail',
    mast: yard?.mast ?? mastOf(name.words, undefined, around.masts)?.name,
    yard: yard?.name,
    on: on.filter(key => key !== yard?.name),
    x,
    corners,
  }
}

/** Keys of the stays, spars and masts that a sail says it is set on, each of them there. */
function thereOf(entry: Statement, name: Name, around: Surroundings, say: Say): readonly string[] {
  if (!clause(entry, 'on')) say(noSpar(name, undefined, 'stay or spar', around))
  return (clause(entry, 'on')?.names ?? []).flatMap(one => {
    if (isThere(one, around)) return [nameKey(one.words)]
    const bearers = bearerNames(around)
    say(unknownName('stay, spar or mast', one, bearers, [nameKey(name.words)]))
    return namesIn(one.words, bearers)
  })
}

function isThere({ words }: Name, around: Surroundings): boolean {
  const key = nameKey(words)
  return (
    around.spars.has(key) ||
    around.stays.has(key) ||
    around.masts.some(mast => mast.name === key || mast.sections.some(one => key === sectionKey(mast, one)))
  )
}

const bearerNames = (around: Surroundings): readonly string[] => [
  ...around.stays.keys(),
  ...around.spars.keys(),
  ...around.masts.flatMap(mast => [mast.name, ...mast.sections.map(one => sectionKey(mast, one))]),
]

/** In the ship's axes, or counted from what the sail is set on, as in "peak at gaff end 0.40 m forward". */
function cornerAt(
  corner: Statement | undefined,
  thing: Ground['thing'] = () => undefined,
): Point3 | undefined {
  const place = corner && clause(corner, 'at')?.place
  if (place) {
    const at = locate(place, { outward: 0, thing })
    return at.known ? point3(at.value.x, 0, at.value.z) : undefined
  }
  const { x, z } = coordinates((corner && clause(corner, 'coords')?.steps) ?? [], 0)
  return x === undefined || z === undefined ? undefined : point3(x, 0, z)
}
