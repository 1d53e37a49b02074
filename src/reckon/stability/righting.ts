import { type Metres, metres, type Radians, radians } from '../../measure/index.ts'

/** A point of the righting-arm curve. */
export interface RightingArm {
  readonly angle: Radians
  readonly arm: Metres
}

/** A righting-arm curve: straight from point to point, from upright (no arm) to its last. */
export type Curve = readonly RightingArm[]

const upright: RightingArm = { angle: radians(0), arm: metres(0) }

/** The points in order of their angles, begun upright. */
export const curveOf = (points: readonly RightingArm[]): Curve => {
  const sorted = points.toSorted((a, b) => a.angle - b.angle)
  return sorted[0]?.angle === 0 ? sorted : [upright, ...sorted]
}

/** The arm at an angle; undefined beyond the last point. */
export function armAt(curve: Curve, angle: Radians): Metres | undefined {
  const after = curve.findIndex(point => point.angle >= angle)
  const to = curve[after]
  const from = curve[after - 1] ?? to
  if (!to || !from) return undefined
  const share = to.angle === from.angle ? 1 : (angle - from.angle) / (to.angle - from.angle)
  return metres(from.arm + (to.arm - from.arm) * share)
}

/** Area under the curve from upright to an angle, in metre-radians; undefined beyond the last point. */
export function areaTo(curve: Curve, angle: Radians): number | undefined {
  const end = armAt(curve, angle)
  if (end === undefined) return undefined
  const points = [...curve.filter(point => point.angle < angle), { angle, arm: end }]
  return points
    .slice(1)
    .reduce(
      (area, to, i) => area + ((to.angle - (points[i]?.angle ?? 0)) * (to.arm + (points[i]?.arm ?? 0))) / 2,
      0,
    )
}

/** Where the arm first comes back to nothing; the last point where it never does. */
export function rangeOf(curve: Curve): Radians {
  for (const [i, to] of curve.entries()) {
    const from = curve[i - 1]
    if (from && from.angle > 0 && to.arm <= 0 && from.arm > 0) {
      return radians(from.angle + ((to.angle - from.angle) * from.arm) / (from.arm - to.arm))
    }
  }
  return curve.at(-1)?.angle ?? radians(0)
}

/** The angle of the greatest arm. */
export const greatestAt = (curve: Curve): Radians =>
  curve.reduce((most, point) => (point.arm > most.arm ? point : most), upright).angle
