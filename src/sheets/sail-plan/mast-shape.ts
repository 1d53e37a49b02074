import type { Mast } from '../../rig/index.ts'
import { isSoberPoint } from './sober.ts'

/** One section of a mast as it is drawn: from foot to head, in metres, moved forward where it stands before the one below. */
export interface SectionShape {
  readonly foot: { readonly x: number; readonly z: number }
  readonly head: { readonly x: number; readonly z: number }
  readonly thickness: number
  /** Height of the overlap with the section below. */
  readonly doubling: number
}

/**
 * The sections of a mast that can be drawn. In a doubling the upper spar stands before the lower one by 0.45 of
 * (0.7 lower + upper thickness): that is drawn, never measured from.
 */
export function sectionShapes(mast: Mast): readonly SectionShape[] {
  const shapes: SectionShape[] = []
  let forward = 0
  for (const { foot, head, diameter, doubling } of mast.sections) {
    if (!foot || !head || !isSoberPoint(foot) || !isSoberPoint(head) || head.z <= foot.z) continue
    const thickness = soberThickness(diameter, head.z - foot.z)
    const below = shapes[shapes.length - 1]
    if (below) forward += 0.45 * (0.7 * below.thickness + thickness)
    shapes.push({
      foot: { x: foot.x - forward, z: foot.z },
      head: { x: head.x - forward, z: head.z },
      thickness,
      doubling: Number.isFinite(doubling) ? Math.min(Math.max(0, doubling), head.z - foot.z) : 0,
    })
  }
  return shapes
}

/** The thickness said, or a fortieth of the length; a spar thicker than a fifth of its length is a slip of the pen. */
export function soberThickness(diameter: number | undefined, length: number): number {
  const isSober = diameter !== undefined && diameter > 0 && diameter < length / 5
  return isSober ? diameter : length / 40
}
