import type { Sail } from '../../rig/index.ts'
import { measuresOf, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** A sail whose foot is not below its head. */
export const footAboveHead: Rule = {
  slug: 'sail/foot-above-head',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const sail of rig.sails) {
      const ends = endsOf(sail)
      if (!ends || ends.low < ends.high) continue
      yield {
        at: sail.span,
        message: `${sentence(sail.name)} has its ${ends.lower} ${shownLength(rig, ends.low)} up, no lower than its ${ends.upper}, ${shownLength(rig, ends.high)} up.`,
        aboard:
          "A sail can't stand upside down: one of the two heights is wrong, and every figure of the sail with it.",
        remedy: 'Check the two heights; they are counted from the waterline.',
        about: [sail.name],
        explains: [measuresOf(sail.name)],
      }
    }
  },
}

interface Ends {
  readonly lower: string
  readonly low: number
  readonly upper: string
  readonly high: number
}

/** The two parts of a sail of which one must be above the other. */
function endsOf(sail: Sail): Ends | undefined {
  if (sail.kind === 'square') {
    return (
      sail.head &&
      sail.foot && { lower: 'foot', low: sail.foot.height, upper: 'head', high: sail.head.height }
    )
  }
  const tack = sail.corners.find(corner => corner.name === 'tack')
  const head = sail.corners.find(corner => corner.name === 'head' || corner.name === 'throat')
  return tack && head && { lower: 'tack', low: tack.at.z, upper: head.name, high: head.at.z }
}
