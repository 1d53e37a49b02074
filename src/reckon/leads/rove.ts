import { type Metres, metres } from '../../measure/index.ts'
import { aboveTackle, type Line } from '../../rig/index.ts'
import type { Tackle } from '../tackle/index.ts'
import type { Ends } from './load.ts'
import type { Way } from './way.ts'

/** How much rope lies along a line as rove, with its load at both ends of its travel. */
export interface Rove {
  readonly home: Metres
  readonly slack: Metres
  /** Of that, what runs in the lead to the tackle at its foot; undefined where one rope is both lead and tackle. */
  readonly pendant: Metres | undefined
}

/** Hook to hook, a tackle hauled until its blocks meet: common practice, no source. */
const drift = 0.5

/**
 * Rope along a line. A tackle lies along the last stretch, in all its parts, or stands at the foot of its lead; and a tye
 * hangs a tackle that the text places.
 */
export function roveAs(line: Line, way: Way, ends: Ends, tackle: Tackle): Rove {
  const first = aboveTackle(line.purchase)
  const fall = tackle.stages.at(-1)?.advantage ?? 1
  if (!line.tackleBelow || (first && tackle.stages.length === 1))
    return alongLead(way, ends, tackle.advantage)
  if (first === 'tye' || (first && line.deed?.verb === 'hoists'))
    return belowTye(way, ends, tackle.advantage, fall)
  return belowPendant(way, ends, tackle.advantage)
}

function alongLead({ lead }: Way, { home, slack }: Ends, parts: number): Rove {
  return { home: metres(lead + parts * home), slack: metres(lead + parts * slack), pendant: undefined }
}

/** The lead ends at the tackle's upper block, which the runners above it bring down further than the yard goes up. */
function belowTye({ lead, last }: Way, { travel }: Ends, advantage: number, fall: number): Rove {
  const home = Math.max(0, last - (travel * advantage) / fall)
  return { home: metres(lead + fall * home), slack: metres(lead + fall * last), pendant: undefined }
}

/** The pendant reaches from the load to the tackle, which is as long as its travel and two blocks that meet. */
function belowPendant({ lead }: Way, { home, slack }: Ends, parts: number): Rove {
  const tackle = drift + slack - home
  const pendant = Math.max(0, lead + slack - tackle)
  return {
    home: metres(pendant + parts * drift),
    slack: metres(pendant + parts * tackle),
    pendant: metres(pendant),
  }
}
