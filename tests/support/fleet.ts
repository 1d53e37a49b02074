import { type Point3, point3 } from '../../src/measure/index.ts'
import type { Line, Rig } from '../../src/rig/index.ts'

/** So many of one vessel moored side by side, as one rig that has nothing but lines and standing rigging. */
export function fleet(rig: Rig, count: number): Rig {
  const abreast = (point: Point3, i: number): Point3 => point3(point.x, point.y + 40 * i, point.z)
  const lines = Array.from({ length: count }, (_, i) =>
    rig.lines.map(
      (line): Line => ({ ...line, lead: line.lead.map(one => ({ ...one, at: abreast(one.at, i) })) }),
    ),
  )
  return { ...rig, lines: lines.flat(), masts: [], spars: [], deck: [] }
}
