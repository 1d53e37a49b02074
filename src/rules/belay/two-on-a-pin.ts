import type { Line, Place, Rig } from '../../rig/index.ts'
import { placeAcross } from '../across.ts'
import { freePinsNear } from '../free-pins.ts'
import {
  aboutLine,
  aboutRail,
  inWords,
  lineName,
  listed,
  placeSubject,
  sentence,
  subject,
} from '../naming.ts'
import { berthOf } from '../pairs.ts'
import type { Draft, Rule } from '../rule.ts'

/** Two lines made fast on one pin, with nothing in the text to say it is meant. */
export const twoOnAPin: Rule = {
  slug: 'belay/two-on-a-pin',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const told = new Set<string>()
    for (const rail of rig.rails) {
      for (const place of rail.places) {
        if (place.shared || place.lines.length < 2) continue
        const lines = linesOn(rig, place)
        const alike = bothSides(rig, place)
        const key = `${rail.mark} ${place.number} ${lines.map(line => line.pairKey).join()}`
        if (alike && told.has(key)) continue
        told.add(key)
        yield crowded(rig, place, lines, alike)
      }
    }
  },
}

function crowded(rig: Rig, place: Place, lines: readonly Line[], alike: boolean): Draft {
  const [first, second = first] = lines
  const names = listed(lines.map(line => (alike ? line.words : lineName(line))))
  const where = alike ? placeOnBothSides(rig, place) : placeSubject(rig, place)
  const side = alike || place.side === 'centre' ? undefined : place.side
  const free = freePinsNear(rig, place, side)
  return {
    at: second?.belaySpan ?? place.span ?? rig.vessel.span,
    message: `${sentence(where)} has ${inWords(lines.length)} lines: ${names}.`,
    aboard: 'Neither can be cast off without lifting the other, and a coil over a loaded line jams it.',
    remedy: `Move one of them${free ? `; free near by: ${free}` : ''}. If it is meant, say "shared by ... and ... because ...".`,
    related: first?.belaySpan
      ? [{ at: first.belaySpan, message: `the ${subject(first)} is belayed here` }]
      : [],
    about: [...lines.flatMap(aboutLine), ...aboutRail(rig.railAt.get(place.rail)), place.address],
    explains: lines.map(berthOf),
    // Both lines of one pair on one pin are told as a pair on one side.
    follows: lines.every(line => line.pairKey === first?.pairKey) ? lines.map(berthOf) : [],
  }
}

const linesOn = (rig: Rig, place: Place): readonly Line[] =>
  place.lines.flatMap(address => rig.lineAt.get(address) ?? [])

/** Whether the mirror pin carries the fellows of the same lines: then it is one fault, told once. */
function bothSides(rig: Rig, place: Place): boolean {
  const across = placeAcross(rig, place)
  if (!across || across.shared) return false
  const keys = (one: Place) =>
    linesOn(rig, one)
      .map(line => line.pairKey)
      .join()
  return keys(place) === keys(across)
}

function placeOnBothSides(rig: Rig, place: Place): string {
  const rail = rig.railAt.get(place.rail)
  if (!rail) return placeSubject(rig, place)
  const pin = rail.places.length > 1 ? ` pin ${place.pin}` : ''
  return `${rail.name}, port and starboard,${pin}`
}
