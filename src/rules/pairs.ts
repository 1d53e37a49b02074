import type { BelayingPoint, Line, Rig } from '../rig/index.ts'

/** The two lines of a pair. */
export interface Pair {
  readonly port: Line
  readonly starboard: Line
}

/** A pair of which both lines have a place. */
export interface BelayedPair {
  readonly port: BelayedLine
  readonly starboard: BelayedLine
}

export type BelayedLine = Line & { readonly belay: BelayingPoint }

export const isBelayed = (line: Line): line is BelayedLine => line.belay !== undefined

/** Every pair of the rig that has both its lines, in the order of the text. */
export function pairsOf(rig: Rig): readonly Pair[] {
  return [...rig.pairAt.values()].flatMap(lines => {
    const port = lines.find(line => line.side === 'port')
    const starboard = lines.find(line => line.side === 'starboard')
    return port && starboard ? [{ port, starboard }] : []
  })
}

/** Every pair with a place for both lines. */
export function belayedPairsOf(rig: Rig): readonly BelayedPair[] {
  return pairsOf(rig).flatMap(({ port, starboard }) =>
    isBelayed(port) && isBelayed(starboard) ? [{ port, starboard }] : [],
  )
}

/**
 * How a pair stands on deck: each on its own side, both on one, crossed, or one of them strayed (to the centreline,
 * say). Only a pair that is 'parted' can be judged by whether its places mirror.
 */
export function standing({
  port,
  starboard,
}: BelayedPair): 'parted' | 'one side' | 'crossed' | 'on the centreline' {
  if (port.belay.side === 'centre' || starboard.belay.side === 'centre') return 'on the centreline'
  if (port.belay.side === starboard.belay.side) return 'one side'
  return port.belay.side === 'port' ? 'parted' : 'crossed'
}

/** What a finding on a line's place explains, and one on its lead from there follows from. */
export const berthOf = ({ address }: Line): string => `berth of ${address}`

/** A line's fellow on the other side. */
export const fellowOf = (rig: Rig, line: Line): Line | undefined =>
  rig.pairAt.get(line.pairKey)?.find(other => other.address !== line.address)

/** Two lines in the order in which the text belays them: so that a finding stands at the later one, whatever its side. */
export function inTextOrder(a: BelayedLine, b: BelayedLine): readonly [BelayedLine, BelayedLine] {
  return belayStart(a) <= belayStart(b) ? [a, b] : [b, a]
}

const belayStart = (line: Line) => (line.belaySpan ?? line.span).start
