import { type Point3, point3 } from '../../measure/index.ts'
import { onMast, type Rig, type Spar } from '../../rig/index.ts'
import { approachWithin, type Segment } from './segment.ts'

/** Within this of a mast, leads come down through its tops, crosstrees and fairleads: common practice, no source. */
const besideMast = 1

/** Blocks hang no further than this from the yard, boom or gaff they belong to: common practice, no source. */
const besideSpar = 1.5

/** Where leads are held in order by fairleads, so that lines that pass close don't foul. */
export interface Gathered {
  /** Beside a mast. */
  readonly at: (point: Point3) => boolean
  /** Along a yard, a boom or a gaff, for the whole of a stretch. */
  readonly along: (stretch: Segment) => boolean
}

export function gatheredBy({ masts, spars }: Pick<Rig, 'masts' | 'spars'>): Gathered {
  const axes = spars.flatMap(spar => axisOf(spar) ?? [])
  return {
    at: point =>
      masts.some(mast => {
        const beside = onMast(mast, point.z)
        return beside !== undefined && Math.hypot(beside.x - point.x, point.y) < besideMast
      }),
    along: ({ from, to }) => axes.some(axis => isBeside(axis, from) && isBeside(axis, to)),
  }
}

/** A spar from end to end, as it stands with the sail set. */
function axisOf(spar: Spar): Segment | undefined {
  if (spar.kind !== 'yard') return spar.inner && spar.outer && { from: spar.inner, to: spar.outer }
  const { middle, length } = spar
  if (!middle || length === undefined) return undefined
  return {
    from: point3(middle.x, -length / 2, middle.z),
    to: point3(middle.x, length / 2, middle.z),
  }
}

const isBeside = (axis: Segment, point: Point3): boolean =>
  approachWithin(besideSpar, axis, { from: point, to: point }) !== undefined
