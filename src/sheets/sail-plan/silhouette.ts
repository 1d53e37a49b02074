import type { Rig } from '../../rig/index.ts'
import { boundsOf } from '../plane.ts'
import type { Point } from '../sheet.ts'
import type { Silhouette } from './layout.ts'
import { sectionShapes } from './mast-shape.ts'
import type { Ship } from './ship.ts'
import { sparShape } from './spar-shape.ts'
import { standingLines } from './standing-lines.ts'
import type { View } from './view.ts'

/** The lines of a ship that the layout keeps clear of everything else on the plate. */
export function silhouettes({ rig, hull, sails, view }: Ship): readonly Silhouette[] {
  const line = (points: readonly Point[]): Silhouette => ({ points, isSail: false })
  const water = view.at(0, 0).y
  const lines = [
    ...sails.map(
      ({ shape }): Silhouette => ({
        points: [...shape.points, ...shape.points.slice(0, 1)],
        isSail: true,
      }),
    ),
    ...(hull ? [line(hull.outline)] : []),
    ...rig.masts.flatMap(mast =>
      sectionShapes(mast).map(({ foot, head }) => line([view.at(foot.x, foot.z), view.at(head.x, head.z)])),
    ),
    ...sparOutlines(rig, view).map(({ outline }) => line(outline)),
    ...standingRuns(rig, view).map(line),
  ]
  const extent = boundsOf(lines.flatMap(({ points }) => points))
  // The waterline is always on the plan, also under a mast without a hull.
  return extent ? [...lines, line([{ x: (extent.left + extent.right) / 2, y: water }])] : []
}

/** Outlines of all spars with geometry. */
export function sparOutlines(
  { spars }: Rig,
  view: View,
): readonly { readonly isYard: boolean; readonly outline: readonly Point[] }[] {
  return spars.flatMap(spar => {
    const shape = sparShape(spar, view)
    return shape ? [{ isYard: spar.kind === 'yard', outline: shape.outline }] : []
  })
}

/** Stays and the parts of shrouds, as straight runs. */
export const standingRuns = (rig: Rig, view: View): readonly (readonly Point[])[] =>
  rig.standing
    .flatMap(item => standingLines(item, rig))
    .map(({ from, to }) => [view.at(from.x, from.z), view.at(to.x, to.z)])
