import type { Line, Rig, Sail, Station } from '../../rig/index.ts'

/** Whose work is whose, for one station. */
export interface StationLines {
  /** The sails of which it works most lines, by mast from forward, low to high. */
  readonly sails: readonly Sail[]
  /** The lines it works, wherever they are belayed, in the order of the text. */
  readonly own: readonly Line[]
  /** Lines on its rails that another station works. */
  readonly othersHere: readonly Line[]
  /** Lines of its sails that another station works. */
  readonly lent: readonly Line[]
  /** The mast of all its sails, whose word is left out of names inside its book; undefined where there are several. */
  readonly mast: string | undefined
}

/** Which sails and lines are a station's, as the text gives its rails and names its lines. */
export function stationLines(rig: Rig, station: Station): StationLines {
  const sails = rig.sails.filter(sail => chiefStation(linesOf(sail, rig), rig) === station.name)
  const own = rig.lines.filter(line => line.station === station.name)
  const rails = new Set(station.rails)
  const isHere = (line: Line) => line.belay !== undefined && rails.has(line.belay.rail)
  const names = new Set(sails.map(sail => sail.name))
  const isOfItsSails = (line: Line) => line.host?.kind === 'sail' && names.has(line.host.name)
  const others = rig.lines.filter(line => line.station !== station.name)
  const [mast, ...more] = new Set(sails.map(sail => sail.mast))
  return {
    sails: lowToHigh(sails, rig),
    own,
    othersHere: others.filter(isHere),
    lent: others.filter(isOfItsSails),
    mast: more.length === 0 ? mast : undefined,
  }
}

/**
 * A line's name inside a station's book: its mast's word left out where the book is that mast's. Staysails and
 * jibs keep theirs, since they take it from another mast than they stand at.
 */
export function nameInBook(
  line: Line,
  { rig, lines }: { readonly rig: Rig; readonly lines: StationLines },
): string {
  const sail = line.host?.kind === 'sail' ? rig.sailAt.get(line.host.name) : undefined
  const keepsItsWord = sail?.class === 'staysail' || sail?.class === 'headsail'
  return lines.mast !== undefined && line.mast === lines.mast && !keepsItsWord ? line.labelOnMast : line.label
}

/** Lines that are written as one: the two of a pair together, in the order of their first. */
export function inPairs(lines: readonly Line[]): readonly (readonly Line[])[] {
  const pairs = new Map<string, Line[]>()
  for (const line of lines) {
    const pair = pairs.get(line.pairKey)
    if (pair) pair.push(line)
    else pairs.set(line.pairKey, [line])
  }
  return [...pairs.values()]
}

const linesOf = (sail: Sail, rig: Rig): readonly Line[] =>
  rig.lines.filter(line => line.host?.kind === 'sail' && line.host.name === sail.name)

// The station that works most of the lines; of several, the one the text names first.
function chiefStation(lines: readonly Line[], rig: Rig): string | undefined {
  const counts = rig.stations.map(({ name }) => ({
    name,
    count: lines.filter(line => line.station === name).length,
  }))
  const most = Math.max(0, ...counts.map(({ count }) => count))
  return most === 0 ? undefined : counts.find(({ count }) => count === most)?.name
}

function lowToHigh(sails: readonly Sail[], rig: Rig): readonly Sail[] {
  const mastPlace = (sail: Sail) => {
    const at = rig.masts.findIndex(mast => mast.name === sail.mast)
    return at < 0 ? rig.masts.length : at
  }
  return [...sails].sort((a, b) => mastPlace(a) - mastPlace(b) || lowest(a) - lowest(b))
}

// Height of a sail's lowest corner above the waterline; zero where the text gives none, so that the order of
// the text stands.
function lowest(sail: Sail): number {
  const heights =
    sail.kind === 'square' ? [sail.foot?.height ?? 0] : sail.corners.map(corner => corner.at.z as number)
  return heights.length > 0 ? Math.min(...heights) : 0
}
