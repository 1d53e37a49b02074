import type { Place, Rig } from '../../rig/index.ts'
import { placeAcross } from '../across.ts'
import { aboutLine, listed, placeName, placeSubject, sentence } from '../naming.ts'
import { type BelayedPair, belayedPairsOf, inTextOrder, standing } from '../pairs.ts'
import type { Draft, Rule } from '../rule.ts'

/** Rails measured apart on either side may differ by so much, in metres, and still be mirror images. */
const grace = 0.15

/** A pair whose two places are not opposite each other. */
export const notMirrored: Rule = {
  slug: 'pair/not-mirrored',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const pair of belayedPairsOf(rig)) {
      if (standing(pair) === 'parted' && !areOpposite(rig, pair)) yield unlike(rig, pair)
    }
  },
}

function unlike(rig: Rig, pair: BelayedPair): Draft {
  const [first, second] = inTextOrder(pair.port, pair.starboard)
  const options = [pair.port, pair.starboard].flatMap(line => placeAcross(rig, line.belay) ?? [])
  return {
    at: second.belaySpan ?? second.span,
    message: `${sentence(pair.port.words)} comes to the ${placeName(rig, pair.port.belay)} and the ${placeName(rig, pair.starboard.belay)}, which are not opposite each other.`,
    aboard:
      'Hands learn a rail by its pairs: what is found at one pin to port is looked for at the same to starboard.',
    remedy: remedyOf(rig, options),
    related: [{ at: first.belaySpan ?? first.span, message: `the ${first.side} one is belayed here` }],
    about: [...aboutLine(pair.port), pair.starboard.address],
  }
}

/** What to do, by what stands across from each of the two. */
function remedyOf(rig: Rig, options: readonly Place[]): string {
  const free = options.filter(place => place.lines.length === 0)
  if (free.length > 0)
    return `Move one across from the other: ${free.map(place => `${placeSubject(rig, place)} is free`).join(', and ')}.`
  if (options.length === 0) return 'Bring them to places opposite each other.'
  return `Change one about with what is opposite the other: ${options.map(place => opposing(rig, place)).join('; ')}.`
}

const opposing = (rig: Rig, place: Place) =>
  `${placeSubject(rig, place)} has the ${listed(place.lines.flatMap(address => rig.lineAt.get(address)?.words ?? []))}`

function areOpposite(rig: Rig, { port, starboard }: BelayedPair): boolean {
  const mirror = placeAcross(rig, port.belay)
  if (mirror && mirror.rail === starboard.belay.rail && mirror.number === starboard.belay.number) return true
  const [a, b] = [port.belay.at, starboard.belay.at]
  return a !== undefined && b !== undefined && Math.abs(a.x - b.x) < grace && Math.abs(a.y + b.y) < grace
}
