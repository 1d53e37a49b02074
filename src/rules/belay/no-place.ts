import type { BelayingPoint, Line, Rig } from '../../rig/index.ts'
import { mirrored, placeAcross } from '../across.ts'
import { freePinsNear } from '../free-pins.ts'
import { manyAsOne, unfinished } from '../many-as-one.ts'
import { aboutLine, pairSubject, placeName, sentence, subject } from '../naming.ts'
import { fellowOf } from '../pairs.ts'
import type { Draft, Rule } from '../rule.ts'
import { whereHung } from '../where.ts'

const aboard =
  'A line without a place of its own is made fast wherever there is room, and nobody finds it in the dark.'

/** A line that is made fast nowhere: an orphan. */
export const noPlace: Rule = {
  slug: 'belay/no-place',
  severity: 'error',
  judges: 'vessels',
  *judge({ rig }) {
    if (rig.rails.length === 0 && rig.lines.length > 1) {
      yield withoutRails(rig)
      return
    }
    const pairs = [...rig.pairAt.values()].map(lines =>
      lines.filter(line => !line.belay && line.lifted === undefined),
    )
    const neighbours = neighboursIn(rig)
    for (const orphans of pairs) {
      const [line] = orphans
      if (line) yield orphan(rig, line, orphans, neighbours)
    }
  },
  // Beyond so many no line was forgotten: the belaying is still to be written, or half of the text is lost.
  together: (drafts, { rig }) =>
    manyAsOne(drafts, {
      slips: 4,
      nameOf: ({ explains: [address = ''] = [] }) => rig.lineAt.get(address)?.words ?? address,
      nor: others => `Nor are ${others.flatMap(({ explains = [] }) => explains).length} other lines`,
      remedy: 'Give each a place on a page "belay on ...", or say "belay ... to ...".',
    }),
}

/** For each sail and spar, where one of its lines is belayed: others of its gear belong near by. */
function neighboursIn(rig: Rig): Neighbours {
  const neighbours = new Map<string, BelayingPoint>()
  for (const { host, belay } of rig.lines) {
    if (host && belay && !neighbours.has(host.name)) neighbours.set(host.name, belay)
  }
  return neighbours
}

type Neighbours = ReadonlyMap<string, BelayingPoint>

function orphan(rig: Rig, line: Line, orphans: readonly Line[], neighbours: Neighbours): Draft {
  const fellow = orphans.length === 1 ? fellowOf(rig, line) : undefined
  const name = sentence(orphans.length > 1 ? pairSubject(line) : subject(line))
  const elsewhere = fellow?.belay ? `; its fellow is at the ${placeName(rig, fellow.belay)}` : ''
  const free = freePinsFor(rig, line, fellow, neighbours)
  return {
    at: whereHung(rig, line),
    message: `${name} is belayed nowhere${elsewhere}.`,
    aboard,
    remedy: free
      ? `Give it a place; free near its gear: ${free}.`
      : 'Give it a place on a page "belay on ...", or say "belay ... to ...".',
    related: fellow?.belaySpan ? [{ at: fellow.belaySpan, message: 'its fellow is belayed here' }] : [],
    about: orphans.flatMap(aboutLine),
    explains: orphans.map(one => one.address),
    follows: [...orphans.map(one => one.address), line.pairKey],
  }
}

/** Free pins across from its fellow, or else near another line of the same sail. */
function freePinsFor(
  rig: Rig,
  line: Line,
  fellow: Line | undefined,
  neighbours: Neighbours,
): string | undefined {
  if (fellow?.belay) {
    return freePinsNear(rig, placeAcross(rig, fellow.belay) ?? mirrored(fellow.belay), line.side)
  }
  const neighbour = line.host && neighbours.get(line.host.name)
  return neighbour && freePinsNear(rig, neighbour, line.side)
}

/** With no rail at all the want is one, however many lines there are. */
function withoutRails(rig: Rig): Draft {
  return {
    at: rig.vessel.span,
    message: `The rig has no rails, and its ${rig.lines.length} lines are belayed nowhere.`,
    aboard,
    remedy: 'List the rails and their pins on a page "rails", and what sits on them on pages "belay on ...".',
    about: rig.lines.flatMap(aboutLine),
    explains: [...rig.lines.map(line => line.address), unfinished],
  }
}
