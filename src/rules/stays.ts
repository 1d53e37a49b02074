import type { Point3 } from '../measure/index.ts'
import type { Rig, Sail, Stay } from '../rig/index.ts'

/** A stay of which both ends are measured. */
export type MeasuredStay = Stay & { readonly from: Point3; readonly to: Point3 }

/** The stays of a rig that are measured, by name. */
export const measuredStays = (rig: Rig): ReadonlyMap<string, MeasuredStay> =>
  new Map(
    rig.standing.flatMap(one => {
      if (one.kind !== 'stay' || !one.from || !one.to) return []
      return [[one.name, { ...one, from: one.from, to: one.to }] as const]
    }),
  )

/** A fore-and-aft sail's measured stay; undefined of any other sail. */
export function stayOf(stays: ReadonlyMap<string, MeasuredStay>, sail: Sail): MeasuredStay | undefined {
  if (sail.kind !== 'fore-and-aft') return undefined
  return sail.on.map(name => stays.get(name)).find(stay => stay !== undefined)
}

/** Where a point stands to a straight spar or stay, in metres: how far along from its beginning, and how far off. */
export interface Bearing {
  readonly along: number
  readonly off: number
  readonly length: number
}

/** A point measured along a straight line from one end to the other; undefined where they are one point. */
export function bearingOf(from: Point3, to: Point3, at: Point3): Bearing | undefined {
  const [dx, dy, dz] = [to.x - from.x, to.y - from.y, to.z - from.z]
  const length = Math.hypot(dx, dy, dz)
  if (length === 0) return undefined
  const [px, py, pz] = [at.x - from.x, at.y - from.y, at.z - from.z]
  const along = (px * dx + py * dy + pz * dz) / length
  const off = Math.hypot(px - (along * dx) / length, py - (along * dy) / length, pz - (along * dz) / length)
  return { along, off, length }
}
