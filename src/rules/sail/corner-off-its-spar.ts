import type { Point3 } from '../../measure/index.ts'
import type { Boom, Corner, ForeAndAftSail, Rig } from '../../rig/index.ts'
import type { Span } from '../../text/index.ts'
import { measuresOf, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'
import { bearingOf, type MeasuredStay, measuredStays, stayOf } from '../stays.ts'
import { cornerOf } from './beyond-its-stay.ts'

/** Lacing, hanks and cringles bring a corner so far off its spar or its stay, in metres; a loose foot hangs no lower. */
const farthest = 1

/** A sail with a corner that stands clear of the gaff, the boom or the stay that should hold it. */
export const cornerOffItsSpar: Rule = {
  slug: 'sail/corner-off-its-spar',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const stays = measuredStays(rig)
    for (const sail of rig.sails) {
      if (sail.kind !== 'fore-and-aft') continue
      for (const { corner, bearer } of heldCorners(rig, stays, sail)) {
        const bearing = bearingOf(bearer.from, bearer.to, corner.at)
        const past = bearing ? Math.max(0, -bearing.along, bearing.along - bearing.length) : 0
        const off = bearing ? Math.hypot(bearing.off, bearer.endsMatter ? past : 0) : 0
        // A measure too large to reckon with is told where it is said.
        if (!(off > farthest)) continue
        yield {
          at: sail.span,
          message: `${sentence(sail.name)} has its ${corner.name} ${shownLength(rig, off)} off the ${bearer.name}.`,
          aboard:
            'Nothing there holds the corner: the sail as measured is not the one she sets, and its area and its lines are wrong with it.',
          remedy: `Check the ${corner.name}, and the two ends of the ${bearer.name}.`,
          related: [{ at: bearer.span, message: `the ${bearer.name} is said here` }],
          about: [sail.name, bearer.name],
          explains: [measuresOf(sail.name)],
          follows: [cornerOf(sail.name, corner.name)],
        }
      }
    }
  },
}

interface Bearer {
  readonly name: string
  readonly from: Point3
  readonly to: Point3
  readonly span: Span
  /** Whether a corner past its ends is off it; past the ends of a stay is told by a rule of its own. */
  readonly endsMatter: boolean
}

/** Throat and peak on the gaff, the clew on the boom, tack and head on the stay. */
function heldCorners(
  rig: Rig,
  stays: ReadonlyMap<string, MeasuredStay>,
  sail: ForeAndAftSail,
): readonly { readonly corner: Corner; readonly bearer: Bearer }[] {
  const gaff = sail.class === 'gaff sail' ? sparOf(rig, sail, 'gaff') : undefined
  const boom = sail.class === 'gaff sail' ? sparOf(rig, sail, 'boom') : undefined
  const stay = stayOf(stays, sail)
  const onStay = stay && { ...stay, endsMatter: false }
  return sail.corners.flatMap(corner => {
    const bearer = bearerOf(corner, { gaff, boom, stay: onStay })
    return bearer ? [{ corner, bearer }] : []
  })
}

function bearerOf(
  { name }: Corner,
  { gaff, boom, stay }: Readonly<Record<'gaff' | 'boom' | 'stay', Bearer | undefined>>,
): Bearer | undefined {
  switch (name) {
    case 'throat':
    case 'peak':
      return gaff
    case 'clew':
      return boom
    case 'tack':
    case 'head':
      return stay
  }
}

function sparOf(rig: Rig, sail: ForeAndAftSail, kind: Boom['kind']): Bearer | undefined {
  const spar = sail.on.map(name => rig.sparAt.get(name)).find(one => one?.kind === kind)
  if (spar?.kind !== kind || !spar.inner || !spar.outer) return undefined
  return { name: spar.name, from: spar.inner, to: spar.outer, span: spar.span, endsMatter: true }
}
