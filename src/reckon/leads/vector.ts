import { type Point3, point3, type Radians, radians } from '../../measure/index.ts'

/** The way from one point to another, in metres along the vessel's axes. */
export type Vector = Point3

export const between = (from: Point3, to: Point3): Vector =>
  point3(to.x - from.x, to.y - from.y, to.z - from.z)

export const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z

export const lengthOf = (a: Vector): number => Math.hypot(a.x, a.y, a.z)

export const distance = (a: Point3, b: Point3): number => lengthOf(between(a, b))

/** The point so many times a vector beyond another point. */
export const beyond = (from: Point3, way: Vector, times: number): Point3 =>
  point3(from.x + way.x * times, from.y + way.y * times, from.z + way.z * times)

/** Angle between two ways, from nothing (alike) to half a turn (opposite); undefined where one of them has no length. */
export function angleBetween(a: Vector, b: Vector): Radians | undefined {
  const lengths = lengthOf(a) * lengthOf(b)
  if (lengths === 0) return undefined
  return radians(Math.acos(Math.max(-1, Math.min(1, dot(a, b) / lengths))))
}
