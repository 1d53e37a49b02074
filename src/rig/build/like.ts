import { type Clause, type Name, nameKey, type Statement } from '../../syntax/index.ts'
import { clause } from './clauses.ts'
import { type Say, unknownName } from './say.ts'

/**
 * Entries said to be "like" another: copied whole, with "main" read for "fore" throughout, and then
 * overlaid with what they say themselves.
 */
export function withLikes(entries: readonly Statement[], what: string, say: Say): readonly Statement[] {
  const done = new Map<string, Statement>()
  const expanded: Statement[] = []
  for (const entry of entries) {
    const whole = likeAnother(entry, done, what, say)
    if (whole.name) done.set(nameKey(whole.name.words), whole)
    expanded.push(whole)
  }
  return expanded
}

function likeAnother(
  entry: Statement,
  done: ReadonlyMap<string, Statement>,
  what: string,
  say: Say,
): Statement {
  const like = clause(entry, 'like')
  if (!like || !entry.name) return entry
  const model = done.get(nameKey(like.name.words))
  if (!model?.name) {
    say(
      unknownName(
        `${what} above`,
        like.name,
        [...done.values()].flatMap(one => one.name?.words ?? []),
      ),
    )
    return entry
  }
  const own = { ...entry, clauses: entry.clauses.filter(one => one.kind !== 'like') }
  return overlaid(renamed(model, swap(model.name, entry.name)), own)
}

/** What one statement says over another: each clause and each named particular replaces its own kind. */
export function overlaid(base: Statement, own: Statement): Statement {
  const kinds = new Set(own.clauses.map(one => one.kind))
  const kept = base.clauses.filter(one => isLeave(one) || !(kinds.has(one.kind) || isLabel(one)))
  const clauses = [...kept, ...own.clauses]
  return { ...own, clauses, block: overlaidBlock(base.block, own.block) }
}

/** What was let stand of the model is let stand of its copy, and more may be. */
const isLeave = (one: Clause) => one.kind === 'allow' || one.kind === 'because'

const isLabel = (one: Clause) => one.kind === 'called' || one.kind === 'short'

/**
 * What the copy says several times over, as its reefs, stands instead of all that the model says of that name. A gear
 * hung on the copy is the model's gear, altered as the model alters it, and then as the copy does.
 */
function overlaidBlock(base: readonly Statement[], own: readonly Statement[]): readonly Statement[] {
  if (own.length === 0) return base
  const named = own.filter(({ name }) => name).map(one => [particularKey(one), one] as const)
  const severalOf = (key: string) => named.filter(([other]) => other === key).length > 1
  const said = new Map(named.filter(([key]) => !severalOf(key)))
  const hangsAnother = (one: Statement) =>
    one.kind === 'hang' && !said.has(particularKey(one)) && own.some(other => other.kind === 'hang')
  const kept = base
    .filter(one => !hangsAnother(one) && !severalOf(particularKey(one)))
    .map(one => {
      const key = particularKey(one)
      const again = said.get(key)
      if (!again) return one
      said.delete(key)
      return again.kind === 'hang'
        ? { ...again, block: [...one.block, ...again.block] }
        : overlaid(one, again)
    })
  const fresh = own.filter(
    one => !one.name || severalOf(particularKey(one)) || said.get(particularKey(one)) === one,
  )
  return [...kept, ...fresh]
}

const particularKey = (one: Statement) => `${one.kind} ${nameKey(one.name?.words ?? '')}`

/** The words in which two names differ: how "fore" becomes "main". */
export function swap(from: Name, to: Name): (words: string) => string {
  const old = from.words.split(/\s+/)
  const fresh = to.words.split(/\s+/)
  while (old.length > 1 && fresh.length > 1 && sameWord(old.at(-1), fresh.at(-1))) {
    old.pop()
    fresh.pop()
  }
  while (old.length > 1 && fresh.length > 1 && sameWord(old[0], fresh[0])) {
    old.shift()
    fresh.shift()
  }
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}])${old.map(escaped).join('\\s+')}(?![\\p{L}\\p{N}])`, 'giu')
  return words => words.replace(pattern, () => fresh.join(' '))
}

const sameWord = (a: string | undefined, b: string | undefined) => a?.toLowerCase() === b?.toLowerCase()

const escaped = (word: string) => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

/** A copy of any piece of the tree with every name in it read anew. What is quoted stays. */
export function renamed<T>(piece: T, rename: (words: string) => string): T {
  if (Array.isArray(piece)) return piece.map(part => renamed(part, rename)) as T
  if (piece === null || typeof piece !== 'object') return piece
  if (isName(piece)) return { ...piece, words: rename(piece.words) } as T
  const copy: Record<string, unknown> = {}
  for (const [key, part] of Object.entries(piece)) copy[key] = key === 'span' ? part : renamed(part, rename)
  return copy as T
}

const isName = (piece: object): piece is Name =>
  'words' in piece && typeof piece.words === 'string' && 'quoted' in piece
