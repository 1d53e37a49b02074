import type { Line, Place, Rig } from '../../rig/index.ts'
import { drawsClewForward, isHalyard, sheetsClew } from '../deeds.ts'
import { freePinsNear } from '../free-pins.ts'
import { aboutLine, aboutRail, lineName, listed, placeSubject, sentence, subject } from '../naming.ts'
import { berthOf } from '../pairs.ts'
import type { Draft, Rule } from '../rule.ts'

/** Lines that may not share a pin even on purpose: a halyard, or two that are worked against each other. */
export const neverShared: Rule = {
  slug: 'belay/never-shared',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const place of rig.rails.flatMap(rail => rail.places)) {
      if (!place.shared || place.lines.length < 2) continue
      const lines = place.lines.flatMap(address => rig.lineAt.get(address) ?? [])
      const why = lines.some(isHalyard) ? halyardWhy : opposedWhy(lines)
      if (why) yield shared(rig, place, lines, why)
    }
  },
}

function shared(rig: Rig, place: Place, lines: readonly Line[], why: string): Draft {
  const [first, second = first] = lines
  const free = freePinsNear(rig, place, place.side === 'centre' ? undefined : place.side)
  return {
    at: second?.belaySpan ?? place.span ?? rig.vessel.span,
    message: `${sentence(placeSubject(rig, place))} is shared by ${listed(lines.map(lineName))}, ${why}.`,
    aboard: 'What must be let go at once, or eased while the other is hauled, can have no coil over it.',
    remedy: `Give each its own place${free ? `; free near by: ${free}` : ''}.`,
    related: first?.belaySpan
      ? [{ at: first.belaySpan, message: `the ${subject(first)} is belayed here` }]
      : [],
    about: [...lines.flatMap(aboutLine), ...aboutRail(rig.railAt.get(place.rail)), place.address],
    explains: lines.map(berthOf),
  }
}

const halyardWhy = 'but a halyard shares its pin with nothing'

/** Sheet and clewline of one clew, the two braces of a yard: one eases the other. Tack and sheet of a course bear by turns. */
function opposedWhy(lines: readonly Line[]): string | undefined {
  if (lines.some(line => lines.some(other => line.counterparts.includes(other.address))))
    return 'which are worked against each other'
  const tacks = lines.filter(drawsClewForward)
  const isCourse = tacks.some(tack =>
    lines.some(line => sheetsClew(line) && line.host?.name === tack.host?.name),
  )
  return isCourse ? 'and the one comes under load as the other is let go' : undefined
}
