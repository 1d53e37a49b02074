import type { Line, Mast } from '../../rig/index.ts'
import type { Field } from './field.ts'
import { approachWithin, crossingAngle, type Segment } from './segment.ts'

/** A lead that passes through a mast. */
export interface ThroughMast {
  readonly line: Line
  readonly mast: Mast
}

/** At a lesser angle a line runs down the mast, over a sheave in it: 10 degrees, common practice, no source. */
const downMast = (10 * Math.PI) / 180

/** Leads whose line would cut more than half a mast's thickness. */
export function throughMastsOf({ rig, strands, near, gathered }: Field): readonly ThroughMast[] {
  return rig.masts.flatMap(mast => {
    const sections = mast.sections.flatMap(({ foot, head, diameter }) =>
      foot && head && diameter ? [{ from: foot, to: head, radius: diameter / 2 }] : [],
    )
    const lines = sections.flatMap(section =>
      near(section, section.radius).flatMap(i => {
        const strand = strands[i]
        return strand && cuts(strand, section) && !gathered.along(strand) ? [strand.line] : []
      }),
    )
    return [...new Set(lines)].map(line => ({ line, mast }))
  })
}

function cuts(strand: Segment, section: Segment & { readonly radius: number }): boolean {
  const near = approachWithin(section.radius / 2, strand, section)
  return near !== undefined && near.fromEnd > section.radius && crossingAngle(strand, section) > downMast
}
