import { type Name, nameKey, type Page } from '../../syntax/index.ts'
import { clause } from './clauses.ts'
import { altered, emptyKit, type Kit } from './kit.ts'
import { leavesOf } from './leave.ts'
import { finding, type Say, unknownName } from './say.ts'

/** All gears of the texts by key, each made from the one it is like; a loop of likenesses is a finding. */
export function buildGears(pages: readonly Page[], say: Say): ReadonlyMap<string, Kit> {
  const written = new Map<string, Page & { readonly name: Name }>()
  for (const page of pages) {
    if (page.kind !== 'gear' || !page.name) continue
    const named = { ...page, name: page.name }
    const before = written.get(nameKey(page.name.words))
    // A ship may replace a gear of the standard by writing it anew on a page of her own.
    if (before && before.span.source === page.span.source) {
      say(
        finding('name/twice', page.name.span, `The gear "${page.name.words}" is given twice.`, {
          remedy: 'Rename one, or put both into one page.',
          related: [{ at: before.name.span, message: 'it is first given here' }],
        }),
      )
      continue
    }
    written.set(nameKey(page.name.words), named)
  }
  const made = new Map<string, Kit>()
  for (const key of written.keys()) gearOf(key, written, made, [], say)
  return made
}

function gearOf(
  key: string,
  written: ReadonlyMap<string, Page & { readonly name: Name }>,
  made: Map<string, Kit>,
  asking: readonly string[],
  say: Say,
): Kit | undefined {
  const ready = made.get(key)
  if (ready) return ready
  const page = written.get(key)
  if (!page) return undefined
  const like = clause(page, 'like')
  const base = like ? baseOf(like.name, key, written, made, asking, say) : undefined
  const before = base ?? emptyKit(page.name)
  const own = { ...before, name: page.name, leaves: [...before.leaves, ...leavesOf(page)] }
  const kit = altered(own, page.block, 'own page', say)
  made.set(key, kit)
  return kit
}

/** Likenesses deeper than this are taken for a loop or a mistake. */
const deepest = 32

function baseOf(
  name: Name,
  of: string,
  written: ReadonlyMap<string, Page & { readonly name: Name }>,
  made: Map<string, Kit>,
  asking: readonly string[],
  say: Say,
): Kit | undefined {
  const key = nameKey(name.words)
  if (key === of || asking.includes(key) || asking.length > deepest) {
    say(
      finding('name/like-itself', name.span, `The gear "${name.words}" is said to be like itself.`, {
        remedy: 'Say what it holds, or name another gear it is like.',
      }),
    )
    return undefined
  }
  const base = gearOf(key, written, made, [...asking, of], say)
  if (!base)
    say(
      unknownName(
        'gear',
        name,
        [...written.values()].map(page => page.name.words),
      ),
    )
  return base
}
