import { measuresOf, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'
import { type Bearing, bearingOf, measuredStays, stayOf } from '../stays.ts'

/** A shackle or a strop may bring a corner so far past the end of its stay, in metres. */
const grace = 0.3

/** A sail whose tack or head lies past an end of the stay it is set on. */
export const beyondItsStay: Rule = {
  slug: 'sail/beyond-its-stay',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const stays = measuredStays(rig)
    for (const sail of rig.sails) {
      const stay = stayOf(stays, sail)
      if (!stay || sail.kind !== 'fore-and-aft') continue
      for (const { name, at } of sail.corners) {
        const bearing = name === 'clew' ? undefined : bearingOf(stay.to, stay.from, at)
        const past = bearing && pastEnd(bearing)
        if (!past || past.by <= grace) continue
        yield {
          at: sail.span,
          message: `${sentence(sail.name)} has its ${name} ${shownLength(rig, past.by)} past the ${past.end} of the ${stay.name}.`,
          aboard: 'There is no stay there for its hanks to run on.',
          remedy: 'Check the corner, and the two ends of the stay.',
          related: [{ at: stay.span, message: `the ${stay.name} is said here` }],
          about: [sail.name, stay.name],
          explains: [cornerOf(sail.name, name), measuresOf(sail.name)],
        }
      }
    }
  },
}

/** What a finding on one corner of a sail explains and follows from. */
export const cornerOf = (sail: string, corner: string): string => `${corner} of ${sail}`

/** How far past the foot or the head of a stay a point lies; undefined where beside it. */
function pastEnd({
  along,
  length,
}: Bearing): { readonly end: 'foot' | 'head'; readonly by: number } | undefined {
  if (along < 0) return { end: 'foot', by: -along }
  return along > length ? { end: 'head', by: along - length } : undefined
}
