import type { Line, Mast, Rig } from '../../rig/index.ts'
import { gatheredBy } from './gathered.ts'
import { planIndex } from './plan-index.ts'
import { approach, crossingAngle, type Segment } from './segment.ts'
import { strandsOf } from './strand.ts'

/** A lead that passes through a mast. */
export interface ThroughMast {
  readonly line: Line
  readonly mast: Mast
}

/** At a lesser angle a line runs down the mast, over a sheave in it: 10 degrees, common practice, no source. */
const downMast = (10 * Math.PI) / 180

/** Leads whose line would cut more than half a mast's thickness. */
export function throughMastsOf(rig: Rig): readonly ThroughMast[] {
  const gathered = gatheredBy(rig)
  const strands = rig.lines.flatMap(strandsOf)
  const near = planIndex(strands, 0.5)
  return rig.masts.flatMap(mast => {
    const sections = mast.sections.flatMap(({ foot, head, diameter }) =>
      foot && head && diameter ? [{ from: foot, to: head, radius: diameter / 2 }] : [],
    )
    const lines = sections.flatMap(section =>
      near(section).flatMap(i => {
        const strand = strands[i]
        return strand && !gathered.along(strand) && cuts(strand, section) ? [strand.line] : []
      }),
    )
    return [...new Set(lines)].map(line => ({ line, mast }))
  })
}

function cuts(strand: Segment, section: Segment & { readonly radius: number }): boolean {
  const { distance, fromEnd } = approach(strand, section)
  return (
    distance < section.radius / 2 && fromEnd > section.radius && crossingAngle(strand, section) > downMast
  )
}
