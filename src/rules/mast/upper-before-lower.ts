import type { Line, Place, Rail, Rig, SquareSail } from '../../rig/index.ts'
import { isHalyard } from '../deeds.ts'
import { aboutLine, aboutRail, listed, railName, sentence } from '../naming.ts'
import { orderOf, outOfOrder } from '../out-of-order.ts'
import type { Draft, Rule } from '../rule.ts'

/** Gear of an upper square sail forward of that of a lower one on the same rail. */
export const upperBeforeLower: Rule = {
  slug: 'mast/upper-before-lower',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const told = new Set<string>()
    for (const rail of rig.rails) {
      if (rail.lie !== 'port' && rail.lie !== 'starboard') continue
      for (const row of rowsAlong(rig, rail)) {
        const strayed = strayedIn(row)
        const [first] = strayed
        // The same disorder on both sides of the deck is one.
        const key = `${rail.mark} ${first?.line.pairKey}`
        if (!first || told.has(key)) continue
        told.add(key)
        yield disordered(rail, row, first, strayed)
      }
    }
  },
}

interface Berthed {
  readonly line: Line
  readonly place: Place
  readonly sail: SquareSail
  readonly height: number
}

/** The square sails from the lowest up; two that take each other's place count alike. */
const heights: Readonly<Record<SquareSail['class'], number | undefined>> = {
  course: 0,
  'lower topsail': 1,
  topsail: 1,
  'upper topsail': 2,
  'lower topgallant': 3,
  topgallant: 3,
  'upper topgallant': 4,
  royal: 5,
  skysail: 6,
  'square sail': undefined,
}

/** What a rail carries of each mast's square sails, from forward. Halyards stand at the ends and don't count. */
function rowsAlong(rig: Rig, rail: Rail): readonly (readonly Berthed[])[] {
  const rows = new Map<string, Berthed[]>()
  for (const place of rail.places) {
    for (const line of place.lines.flatMap(address => rig.lineAt.get(address) ?? [])) {
      const sail = line.host && rig.sailAt.get(line.host.name)
      if (sail?.kind !== 'square' || isHalyard(line)) continue
      const height = heights[sail.class]
      const mast = sail.mast ?? ''
      if (height !== undefined) rows.set(mast, [...(rows.get(mast) ?? []), { line, place, sail, height }])
    }
  }
  return [...rows.values()]
}

/** The fewest lines that would have to be moved for the lower sails' to stand before the upper ones'. */
function strayedIn(row: readonly Berthed[]): readonly Berthed[] {
  const model = row.toSorted((a, b) => a.height - b.height)
  const addresses = (some: readonly Berthed[]) => some.map(({ line }) => line.address)
  const strayed = new Set(outOfOrder(addresses(model), addresses(row)))
  return row.filter(({ line }) => strayed.has(line.address))
}

function disordered(rail: Rail, row: readonly Berthed[], first: Berthed, strayed: readonly Berthed[]): Draft {
  const at = row.indexOf(first)
  const after = row.slice(at + 1).find(({ height }) => height < first.height)
  const before = row.slice(0, at).findLast(({ height }) => height > first.height)
  const other = after ?? before
  const more = strayed.filter(({ line }) => line.pairKey !== first.line.pairKey)
  const others = more.length > 0 ? ` Out of order too: ${listed(more.map(({ line }) => line.words))}.` : ''
  const where = rail.mirrored ? `${rail.name}, port and starboard,` : railName(rail)
  return {
    at: first.line.belaySpan ?? first.sail.span,
    message: `${sentence(where)} has the ${first.line.words} at pin ${first.place.pin} ${after ? 'forward of' : 'abaft'} the ${other?.line.words} at pin ${other?.place.pin}, of a ${after ? 'lower' : 'higher'} sail.${others}`,
    aboard: 'The leads of the two cross on their way aloft, and chafe.',
    remedy: 'Belay the gear of the lower sails forward, that of the upper ones abaft it.',
    related: other
      ? [{ at: other.line.belaySpan ?? other.sail.span, message: `the ${other.line.words} is belayed here` }]
      : [],
    about: [...strayed.flatMap(({ line }) => aboutLine(line)), ...aboutRail(rail)],
    follows: [orderOf(first.line)],
  }
}
