import type { Slug } from '../../findings/index.ts'
import { nameKey, type Page, type Statement } from '../../syntax/index.ts'
import { phaseKey } from '../evolution.ts'
import type { Rail } from '../rail.ts'
import type { Allowance } from '../rig.ts'
import type { Belayed } from './belay.ts'
import { clause } from './clauses.ts'
import type { Hung } from './hung.ts'
import { leavesOf, reasonMissing } from './leave.ts'
import type { LineNames } from './line-names.ts'
import { linesCalled } from './lines-called.ts'
import { type Say, unknownName } from './say.ts'

interface Known {
  readonly names: LineNames
  readonly sails: readonly { readonly name: string }[]
  readonly spars: readonly { readonly name: string }[]
  readonly rails: readonly Rail[]
}

/** All in which something may be let stand beside what it concerns. */
interface Beside {
  /** Entries that are called by their names: masts, spars, stays, sails, rails, things on deck, stations. */
  readonly entries: readonly Statement[]
  readonly lines: readonly Hung[]
  readonly pins: Belayed['leaves']
}

/** What the text allows, with its reasons. An allowance without a reason allows nothing. */
export function buildAllowances(
  pages: readonly Page[],
  known: Known,
  beside: Beside,
  say: Say,
): readonly Allowance[] {
  return [
    ...pages.filter(page => page.kind === 'allow').flatMap(page => allowance(page, known, say) ?? []),
    ...allowedBeside(pages, known, beside),
  ]
}

function allowance(page: Page, known: Known, say: Say): Allowance | undefined {
  const because = clause(page, 'because')?.words.text
  const slug = page.name?.words
  if (slug === undefined) return undefined
  if (because === undefined || because.trim() === '') {
    say(reasonMissing(slug, page.span))
    return undefined
  }
  const names = [...(clause(page, 'for')?.names ?? []), ...(clause(page, 'on')?.names ?? [])]
  const things = names.flatMap(name => thingsNamed(name, known, say))
  if (names.length > 0 && things.length === 0) return undefined
  return { rule: slug as Slug, things, because, beside: false, span: page.span }
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

/** What is set in under the things it concerns: one for each place in the text, for all that is made of it. */
function allowedBeside(pages: readonly Page[], { names }: Known, beside: Beside): readonly Allowance[] {
  const made = new Map<string, Allowance>()
  for (const { things, ...leave } of [...ofEntries(beside), ...ofGear(beside), ...ofPages(pages, names)]) {
    if (things.length === 0) continue
    const key = `${leave.span.source} ${leave.span.start}`
    const all = new Set([...(made.get(key)?.things ?? []), ...things])
    made.set(key, { ...leave, things: [...all], beside: true })
  }
  return [...made.values()]
}

type Leaves = Belayed['leaves']

const leavesFor = (said: Parameters<typeof leavesOf>[0], things: () => readonly string[]): Leaves =>
  leavesOf(said).map(leave => ({ ...leave, things: things() }))

const ofEntries = ({ entries, pins }: Beside): Leaves => [
  ...entries.flatMap(entry =>
    [entry, ...entry.block.filter(({ kind }) => kind === 'corner')].flatMap(one =>
      leavesFor(one, () => [nameKey(entry.name?.words ?? '')]),
    ),
  ),
  ...pins,
]

/** Of the lines of a gear, of the sails and spars that it hangs on, and of its orders. */
function ofGear({ lines }: Beside): Leaves {
  const hangings = [...new Set(lines.flatMap(({ hanging }) => hanging ?? []))]
  const sequences = hangings.flatMap(({ kit }) => [kit.toSet ?? [], kit.toDouse ?? []].flat())
  return [
    ...lines.flatMap(({ line, pairKey }) => line.leaves.map(leave => ({ ...leave, things: [pairKey] }))),
    ...hangings.flatMap(({ host, kit }) => kit.leaves.map(leave => ({ ...leave, things: [host.name] }))),
    ...[...new Set(sequences)].flatMap(sequence => {
      const phases = sequence.block.filter(({ kind }) => kind === 'phase')
      const ofPhases = phases.flatMap(phase => leavesFor(phase, () => [phaseKey(phase)]))
      return [...ofPhases, ...leavesFor(sequence, () => phases.map(phaseKey))]
    }),
  ]
}

/** Of the vessel, of a rail as it is belayed, of the order of the sails, and of lines that were surveyed. */
const ofPages = (pages: readonly Page[], names: LineNames): Leaves =>
  pages.flatMap(page => {
    switch (page.kind) {
      case 'vessel':
        return leavesFor(page, () => (page.name ? [page.name.words] : []))
      case 'belayOn':
        return leavesFor(page, () => (page.name ? [nameKey(page.name.words)] : []))
      case 'set':
        return leavesFor(page, () => keysOf(page.names))
      case 'survey':
        return page.block.flatMap(entry =>
          leavesOf(entry).map(leave => ({ ...leave, things: linesCalled(entry, names, silent) })),
        )
      default:
        return []
    }
  })

const keysOf = (names: Page['names']) => names.map(({ words }) => nameKey(words))

/** What a name means was told where the survey itself is read. */
const silent: Say = () => undefined
