import { type Metres, metres, type Point3, type SquareMetres, squareMetres } from '../../measure/index.ts'
import type { Rig } from '../../rig/index.ts'

/** An area above the water, seen from abeam, and how high its centre stands. */
export interface Area {
  readonly area: SquareMetres
  readonly height: Metres
}

/**
 * Masts, booms, gaffs, bowsprit and standing rigging as the wind abeam meets them: length by thickness, each part of a mast from
 * her side upwards, every shroud of both banks. Yards lie end on. What has no place or no thickness is left out.
 */
export function sparAreas({ masts, spars, standing, hull }: Rig): readonly Area[] {
  const side = (hull?.lowestSheer?.z ?? 0) + (hull?.bulwark ?? 0)
  const parts = masts.flatMap(({ sections }) =>
    sections.flatMap(({ foot, head, diameter }) => stick(foot, head, diameter, side)),
  )
  const booms = spars.flatMap(spar =>
    spar.kind === 'yard' || spar.kind === 'studdingsail boom'
      ? []
      : stick(spar.inner, spar.outer, spar.diameter, 0),
  )
  const ropes = standing.flatMap(part => {
    const many = part.kind === 'stay' ? 1 : 2 * part.count
    return stick(part.to, part.from, part.diameter, 0).map(one => ({
      ...one,
      area: squareMetres(one.area * many),
    }))
  })
  return [...parts, ...booms, ...ropes]
}

/** What stands of a stick above a height. */
function stick(
  low: Point3 | undefined,
  high: Point3 | undefined,
  thick: Metres | undefined,
  above: number,
): readonly Area[] {
  if (!low || !high || thick === undefined) return []
  const rise = high.z - low.z
  const hidden = rise > 0 ? Math.min(1, Math.max(0, (above - low.z) / rise)) : 0
  const length = Math.hypot(high.x - low.x, rise) * (1 - hidden)
  const foot = low.z + rise * hidden
  return [{ area: squareMetres(length * thick), height: metres((foot + high.z) / 2) }]
}
