import { type Name, nameKey, type Page } from '../../syntax/index.ts'
import { clause } from './clauses.ts'
import { withoutSide } from './line-names.ts'
import { finding, type Say } from './say.ts'

/** Pages of which those of pins that don't say "on", as "belay no fore rail" and "belay at fore rail", are read as the rail's they name. */
export function pagesAsMeant(pages: readonly Page[], say: Say): readonly Page[] {
  if (!pages.some(isOfPins)) return pages
  const rails = new Set(
    pages.flatMap(({ kind, block }) =>
      kind === 'rails' ? block.map(({ name }) => nameKey(name?.words ?? '')) : [],
    ),
  )
  const isRail = (key: string) => rails.has(key) || rails.has(withoutSide(key).key)
  return pages.map(page => (isOfPins(page) ? ofRail(page, isRail, say) : page))
}

const isOfPins = ({ kind, block }: Page) => kind === 'belay' && block.some(({ pins }) => pins)

function ofRail(page: Page, isRail: (key: string) => boolean, say: Say): Page {
  const place = clause(page, 'leadTo')?.place ?? clause(page, 'at')?.place
  const named = place?.from ?? clause(page, 'in')?.names[0] ?? page.name
  const rail = named && railIn(named, isRail)
  if (!rail) {
    say(
      finding('belay/neither-on-nor-to', page.span, 'These pins stand under no rail.', {
        remedy: 'Say the rail behind "belay on", as in "belay on fore rail".',
      }),
    )
    return page
  }
  const words = `belay on ${rail.words}`
  const between = { ...page.span, start: page.span.start + 'belay'.length, end: rail.span.start }
  say(
    finding(
      'belay/neither-on-nor-to',
      page.span,
      `This page of pins doesn't say "on", and is read as "${words}".`,
      {
        remedy: `Write "${words}".`,
        fix: { title: `Write "${words}"`, edits: [{ at: between, text: ' on ' }] },
      },
    ),
  )
  return { ...page, kind: 'belayOn', name: rail, clauses: [] }
}

/** The rail that a name is, or that it is behind its first word. */
function railIn(name: Name, isRail: (key: string) => boolean): Name | undefined {
  if (isRail(nameKey(name.words))) return name
  const rest = name.words.slice(name.words.indexOf(' ') + 1)
  const span = { ...name.span, start: name.span.end - rest.length }
  return isRail(nameKey(rest)) ? { ...name, words: rest, span } : undefined
}
