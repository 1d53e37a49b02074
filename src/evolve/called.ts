import type { Line, Rig, Side, WorkedLine } from '../rig/index.ts'

/** The two tacks, by the side the wind comes from: on the starboard tack it comes from starboard. */
export const winds: readonly Side[] = ['starboard', 'port']

/**
 * One line as an order calls it. The two of a pair are called weather and lee, or, where the order itself
 * names a side ('trim the yard'), the named one and the other; a single line is called by its name.
 */
export interface CalledLine {
  readonly pairKey: string
  readonly as: 'weather' | 'lee' | 'named' | 'other' | 'single'
}

/** Which lines of a pair-name: one of the called ones, or all there are. A single line is always 'all'. */
export type Reach = WorkedLine['reach']

/** Called lines, folded: both lines of a pair are told at once. */
export interface CalledPair {
  readonly pairKey: string
  readonly reach: Reach
}

const keyOf = ({ pairKey, as }: CalledLine): string => `${pairKey} ${as}`

/** The other side of the ship. */
export const across = (side: Side): Side => (side === 'port' ? 'starboard' : 'port')

/** The lines that a pair-name and a reach stand for, as an order calls them. */
export function calledLines(rig: Rig, { pairKey, reach }: CalledPair): readonly CalledLine[] {
  if (!isPair(rig, pairKey)) return [{ pairKey, as: 'single' }]
  if (reach !== 'all') return [{ pairKey, as: reach }]
  return [
    { pairKey, as: 'weather' },
    { pairKey, as: 'lee' },
  ]
}

/** Whether the name is that of a pair: of two lines that have each a side. */
export function isPair(rig: Rig, pairKey: string): boolean {
  return (rig.pairAt.get(pairKey) ?? []).some(line => line.side !== undefined)
}

/**
 * The lines of the rig that are meant with the wind from this side. Which one the order will name isn't known
 * beforehand, so that a named line and the other may each be either of the pair.
 */
export function linesMeant(rig: Rig, pair: CalledPair, wind: Side): readonly Line[] {
  const lines = rig.pairAt.get(pair.pairKey) ?? []
  if (pair.reach !== 'weather' && pair.reach !== 'lee') return lines
  const side = pair.reach === 'weather' ? wind : across(wind)
  return lines.filter(line => line.side === undefined || line.side === side)
}

/**
 * What must be eased when a called line is hauled, as the order would call it: by the rig's counterparts, found
 * on either tack, so that a counterpart stated for one side only is told on both.
 */
export function counterpartsOf(rig: Rig, called: CalledLine): readonly CalledLine[] {
  const found = new Map<string, CalledLine>()
  for (const wind of winds) {
    for (const line of hauledLines(rig, called, wind)) {
      for (const address of line.counterparts) {
        const counterpart = rig.lineAt.get(address)
        if (!counterpart) continue
        const told = callOf(counterpart, wind, called)
        found.set(keyOf(told), told)
      }
    }
  }
  return [...found.values()]
}

/** A set of called lines that knows that both lines of a pair cover the named one, and the other way round. */
export function covers(lines: readonly CalledLine[], { pairKey, as }: CalledLine): boolean {
  const told = new Set(lines.filter(line => line.pairKey === pairKey).map(line => line.as))
  if (told.has(as)) return true
  const opposed =
    as === 'named' || as === 'other' ? (['weather', 'lee'] as const) : (['named', 'other'] as const)
  return as !== 'single' && opposed.every(call => told.has(call))
}

/** Called lines told at once where both of a pair are among them, in the order of their first mention. */
export function folded(lines: readonly CalledLine[]): readonly CalledPair[] {
  const keys = [...new Set(lines.map(line => line.pairKey))]
  return keys.flatMap(pairKey => foldedPair(pairKey, lines))
}

function foldedPair(pairKey: string, lines: readonly CalledLine[]): readonly CalledPair[] {
  const calls = [...new Set(lines.filter(line => line.pairKey === pairKey).map(line => line.as))]
  const both =
    (calls.includes('weather') && calls.includes('lee')) ||
    (calls.includes('named') && calls.includes('other'))
  if (both || calls.includes('single')) return [{ pairKey, reach: 'all' }]
  return calls.flatMap(as => (as === 'single' ? [] : [{ pairKey, reach: as }]))
}

// For its counterparts the named line is taken as the weather one: what answers it is then called back by `callOf`.
function hauledLines(rig: Rig, { pairKey, as }: CalledLine, wind: Side): readonly Line[] {
  const reach = as === 'named' ? 'weather' : as === 'other' ? 'lee' : as === 'single' ? 'all' : as
  return linesMeant(rig, { pairKey, reach }, wind)
}

function callOf(line: Line, wind: Side, hauled: CalledLine): CalledLine {
  if (line.side === undefined) return { pairKey: line.pairKey, as: 'single' }
  const toWeather = line.side === wind
  const byName = line.pairKey === hauled.pairKey && (hauled.as === 'named' || hauled.as === 'other')
  if (byName) return { pairKey: line.pairKey, as: toWeather ? 'named' : 'other' }
  return { pairKey: line.pairKey, as: toWeather ? 'weather' : 'lee' }
}
