import type { Point3 } from '../../measure/index.ts'
import type { Rig, Stay } from '../../rig/index.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** A shackle or a strop may bring a corner so far past the end of its stay, in metres. */
const grace = 0.3

/** A sail whose tack or head lies past an end of the stay it is set on. */
export const beyondItsStay: Rule = {
  slug: 'sail/beyond-its-stay',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const stays = staysOf(rig)
    for (const sail of rig.sails) {
      if (sail.kind === 'square') continue
      const stay = sail.on.map(name => stays.get(name)).find(one => one !== undefined)
      for (const { name, at } of sail.corners) {
        if (!stay?.from || !stay.to || name === 'clew') continue
        const past = pastEnd(stay.to, stay.from, at)
        if (!past || past.by <= grace) continue
        yield {
          at: sail.span,
          message: `${sentence(sail.name)} has its ${name} ${shownLength(rig, past.by)} past the ${past.end} of the ${stay.name}.`,
          aboard: 'There is no stay there for its hanks to run on.',
          remedy: 'Check the corner, and the two ends of the stay.',
          related: [{ at: stay.span, message: `the ${stay.name} is said here` }],
          about: [sail.name, stay.name],
        }
      }
    }
  },
}

const staysOf = (rig: Rig): ReadonlyMap<string, Stay> =>
  new Map(rig.standing.flatMap(one => (one.kind === 'stay' ? [[one.name, one] as const] : [])))

/** How far past the foot or the head of a stay a point lies, measured along the stay; undefined where beside it. */
function pastEnd(
  foot: Point3,
  head: Point3,
  at: Point3,
): { readonly end: 'foot' | 'head'; readonly by: number } | undefined {
  const [dx, dy, dz] = [head.x - foot.x, head.y - foot.y, head.z - foot.z]
  const length = Math.hypot(dx, dy, dz)
  if (length === 0) return undefined
  const along = ((at.x - foot.x) * dx + (at.y - foot.y) * dy + (at.z - foot.z) * dz) / length
  if (along < 0) return { end: 'foot', by: -along }
  return along > length ? { end: 'head', by: along - length } : undefined
}
