import type { Slug } from '../../findings/index.ts'
import { nameKey, type Page } from '../../syntax/index.ts'
import type { Rail } from '../rail.ts'
import type { Allowance } from '../rig.ts'
import { clause } from './clauses.ts'
import type { LineNames } from './line-names.ts'
import { finding, type Say, unknownName } from './say.ts'

interface Known {
  readonly names: LineNames
  readonly sails: readonly { readonly name: string }[]
  readonly spars: readonly { readonly name: string }[]
  readonly rails: readonly Rail[]
}

/** What the text allows, with its reasons. An allowance without a reason allows nothing. */
export function buildAllowances(pages: readonly Page[], known: Known, say: Say): readonly Allowance[] {
  return pages.filter(page => page.kind === 'allow').flatMap(page => allowance(page, known, say) ?? [])
}

function allowance(page: Page, known: Known, say: Say): Allowance | undefined {
  const because = clause(page, 'because')?.words.text
  const slug = page.name?.words
  if (slug === undefined) return undefined
  if (because === undefined || because.trim() === '') {
    say(
      finding('allow/no-reason', page.span, `${slug} is allowed without a reason.`, {
        aboard: 'The next mate must know why it was let stand.',
        remedy: 'Say why: "because ...".',
      }),
    )
    return undefined
  }
  const names = [...(clause(page, 'for')?.names ?? []), ...(clause(page, 'on')?.names ?? [])]
  const things = names.flatMap(name => thingsNamed(name, known, say))
  if (names.length > 0 && things.length === 0) return undefined
  return { rule: slug as Slug, things, because, span: page.span }
}

function thingsNamed(name: Parameters<LineNames['find']>[0], known: Known, say: Say): readonly string[] {
  const key = nameKey(name.words)
  const lines = known.names.findAll(name)
  if (lines.length > 0) return lines
  const others = [...known.sails, ...known.spars].map(one => one.name).filter(one => one === key)
  const rails = known.rails.filter(rail => rail.name === key).map(rail => rail.code)
  const found = [...others, ...rails]
  if (found.length === 0 && !known.names.isExcused(name)) {
    say(
      unknownName('line, sail, spar or rail', name, [
        ...known.names.offers(),
        ...known.sails.map(one => one.name),
        ...known.rails.map(one => one.name),
      ]),
    )
  }
  return found
}
