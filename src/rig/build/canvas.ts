import { type CarriedSail, type Name, nameKey, type Page, type Statement } from '../../syntax/index.ts'
import type { Canvas, Carried } from '../canvas.ts'
import type { Sail } from '../sail.ts'
import { clause, clausesOf } from './clauses.ts'
import { capitalised, finding, type Say, unknownName } from './say.ts'

/** The working sail plans of a text. One may be like another above it; one that comes to nothing is left out. */
export function buildCanvas(
  pages: readonly Page[],
  sails: readonly Sail[],
  declared: ReadonlySet<string>,
  say: Say,
): readonly Canvas[] {
  const plans = new Map<string, Canvas>()
  for (const entry of pages.filter(page => page.kind === 'canvas').flatMap(page => page.block)) {
    if (entry.kind !== 'canvas' || !entry.name) continue
    const key = nameKey(entry.name.words)
    const before = plans.get(key)
    if (before) {
      say(
        finding('name/twice', entry.name.span, `The canvas "${entry.name.words}" is given twice.`, {
          aboard: 'Nobody knows which of the two is meant when it is ordered.',
          remedy: 'Rename one of them, or strike it out.',
          related: [{ at: before.span, message: 'it is first given here' }],
        }),
      )
      continue
    }
    const plan = planOf(entry, entry.name, { plans, sails, declared }, say)
    if (plan) plans.set(key, plan)
  }
  return [...plans.values()]
}

interface Known {
  readonly plans: ReadonlyMap<string, Canvas>
  readonly sails: readonly Sail[]
  /** Names of all sails said, those too that couldn't be made. */
  readonly declared: ReadonlySet<string>
}

function planOf(entry: Statement, name: Name, known: Known, say: Say): Canvas | undefined {
  const told = { count: 0 }
  const telling: Say = one => {
    told.count++
    say(one)
  }
  const like = clause(entry, 'like')?.name
  const model = like && known.plans.get(nameKey(like.words))
  if (like && !model) telling(unknownName('canvas above', like, known.plans.keys()))
  const said = clausesOf(entry, 'carries').flatMap(one => one.sails)
  tellTwice(said, say)
  const reefs = new Map(model?.sails.map(one => [one.sail, one.reefs] as const))
  // A sail said by its own name stands before one said with all of its kind.
  for (const one of [...said].sort((a, b) => Number(isEvery(b.name)) - Number(isEvery(a.name)))) {
    for (const sail of meant(one.name, known, telling)) reefs.set(sail.name, reefsTaken(one, sail, telling))
  }
  const left = (clause(entry, 'without')?.names ?? []).flatMap(one => meant(one, known, telling))
  for (const sail of left) reefs.delete(sail.name)
  const carried = known.sails.flatMap((sail): Carried[] => {
    const taken = reefs.get(sail.name)
    return taken === undefined ? [] : [{ sail: sail.name, reefs: taken }]
  })
  if (carried.length > 0) {
    const label = clause(entry, 'called')?.label.text ?? capitalised(name.words)
    return { name: nameKey(name.words), label, sails: carried, span: name.span }
  }
  if (told.count === 0 && !entry.doubtful)
    say(
      finding('canvas/empty', name.span, `It isn't said what "${name.words}" carries.`, {
        remedy: 'Say its sails after a comma, as in "every topsail and fore course, 1 reef in spanker".',
      }),
    )
  return undefined
}

const isEvery = ({ words, quoted }: Name) => !quoted && /^every\s/i.test(words)

/** The sails that a name means: its own, or with 'every' all of a kind; 'every sail' is all plain sail. */
function meant(name: Name, { sails, declared }: Known, say: Say): readonly Sail[] {
  const key = nameKey(name.words)
  const kind = isEvery(name) ? key.replace(/^every\s+/, '') : undefined
  const found = sails.filter(sail => (kind === undefined ? sail.name === key : isOfKind(sail, kind)))
  if (found.length === 0 && !declared.has(key)) {
    const kinds = kind === undefined ? [] : sails.map(sail => `every ${sail.class}`)
    say(unknownName('sail', name, new Set([...kinds, ...sails.map(sail => sail.name)])))
  }
  return found
}

function isOfKind(sail: Sail, kind: string): boolean {
  if (kind === 'sail') return sail.kind !== 'studdingsail'
  if (sail.class === kind || (sail.kind === 'square' && sail.class.endsWith(` ${kind}`))) return true
  return sail.class !== 'gaff topsail' && (sail.name === kind || sail.name.endsWith(` ${kind}`))
}

function reefsTaken({ reefs }: CarriedSail, sail: Sail, say: Say): number {
  const most = sail.reefs.length
  if (!reefs || reefs.value <= most) return reefs?.value ?? 0
  const has = most === 0 ? 'no reef is told of' : most === 1 ? 'it has 1' : `it has ${most}`
  say(
    finding('canvas/no-such-reef', reefs.span, `The ${sail.name} can't take ${reefs.value} reefs: ${has}.`, {
      remedy: 'Say fewer, or give the sail its reefs, as in "reef 1.80 m above foot".',
    }),
  )
  return most
}

function tellTwice(said: readonly CarriedSail[], say: Say): void {
  const first = new Map<string, Name>()
  for (const { name } of said) {
    const before = first.get(nameKey(name.words))
    if (!before) first.set(nameKey(name.words), name)
    else
      say(
        finding('name/twice', name.span, `"${name.words}" is carried twice.`, {
          severity: 'warning',
          remedy: 'Strike one of them out.',
          related: [{ at: before.span, message: 'it is first said here' }],
        }),
      )
  }
}
