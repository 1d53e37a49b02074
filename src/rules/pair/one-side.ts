import { mirrored, placeAcross } from '../across.ts'
import { freePinsNear } from '../free-pins.ts'
import { aboutLine, placeName, sentence } from '../naming.ts'
import { belayedPairsOf, berthOf, inTextOrder, standing } from '../pairs.ts'
import type { Rule } from '../rule.ts'

/** A port and starboard pair of which both lines are belayed on one side. */
export const oneSide: Rule = {
  slug: 'pair/one-side',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const pair of belayedPairsOf(rig)) {
      if (standing(pair) !== 'one side') continue
      const { port, starboard } = pair
      const side = port.belay.side === 'port' ? 'port' : 'starboard'
      const [strayed, right] = side === 'port' ? [starboard, port] : [port, starboard]
      const [first, second] = inTextOrder(port, starboard)
      const places = [first, second].map(line => placeName(rig, line.belay))
      const where =
        places[0] === places[1] ? `on one pin, the ${places[0]}` : `at the ${places[0]} and the ${places[1]}`
      const free = freePinsNear(rig, placeAcross(rig, right.belay) ?? mirrored(right.belay), strayed.side)
      yield {
        at: strayed.belaySpan ?? strayed.span,
        message: `${sentence(port.words)} has both its lines to ${side}${places[0] === places[1] ? ', ' : ': '}${where}.`,
        aboard:
          'The two are worked against each other, one on each side; from one side neither clew nor yardarm can be trimmed.',
        remedy: `Lead the ${strayed.side} one to ${strayed.side}${free ? `; free there: ${free}` : ''}.`,
        related: [{ at: right.belaySpan ?? right.span, message: `the ${right.side} one is belayed here` }],
        about: [...aboutLine(port), starboard.address],
        explains: [port.address, starboard.address, berthOf(port), berthOf(starboard)],
      }
    }
  },
}
