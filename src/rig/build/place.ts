import { type Figure, known, type Point3, point3, unknown } from '../../measure/index.ts'
import { nameKey, type Place, type Step } from '../../syntax/index.ts'

/** Something with a place: a corner, the middle of a yard, a masthead. */
export interface Thing {
  readonly at: Point3
  /** Tangent of the rake, where up and below follow a mast. */
  readonly rake?: number
  /** Half the yard's or the foot's length: what a share "out" is of. */
  readonly half?: number
  /** The point a share of the way down an edge. */
  readonly down?: (share: number) => Point3
}

/** What the names in a place stand for, and on which side "out" is: -1 to port, 1 to starboard, 0 on the centreline. */
export interface Ground {
  readonly outward: -1 | 0 | 1
  readonly thing: (key: string) => Figure<Thing> | undefined
}

/** Finds a place said in the text, in the ship's axes. Unknown where a name or a coordinate is missing. */
export function locate(place: Place, ground: Ground): Figure<Point3> {
  if (!place.from) return fromAxes(place.steps, ground.outward)
  const found = ground.thing(nameKey(place.from.words))
  if (!found) return unknown(`there is no "${place.from.words}" here`)
  if (!found.known) return found
  const from = stepped(found.value, place.steps, ground.outward)
  if (!place.abreast) return known(from)
  const abreast = ground.thing(nameKey(place.abreast.words))
  if (!abreast?.known) return abreast ?? unknown(`there is no "${place.abreast.words}" here`)
  return known({ ...from, y: abreast.value.at.y })
}

/** A place counted from the forward perpendicular, the centreline and the waterline. */
function fromAxes(steps: readonly Step[], outward: number): Figure<Point3> {
  const axes = coordinates(steps, outward)
  if (axes.x === undefined) return unknown('it is not said how far aft or forward it is')
  if (axes.z === undefined) return unknown('its height is not given')
  return known(point3(axes.x, axes.y ?? 0, axes.z))
}

/**
 * Coordinates that steps from the ship's axes give, each undefined where no step says it.
 * "Out" is from the centreline on the side `outward`.
 */
export function coordinates(
  steps: readonly Step[],
  outward: number,
): { readonly x: number | undefined; readonly y: number | undefined; readonly z: number | undefined } {
  let x: number | undefined
  let y: number | undefined
  let z: number | undefined
  for (const { measure, direction } of steps) {
    switch (direction) {
      case 'aft':
        x = measure.value
        break
      case 'forward':
        x = -measure.value
        break
      case 'out':
        y = measure.value * outward
        break
      case 'port':
        y = -measure.value
        break
      case 'starboard':
        y = measure.value
        break
      case 'up':
        z = measure.value
        break
      case 'below':
      case 'down':
        z = -measure.value
        break
    }
  }
  return { x, y, z }
}

/** Steps from a thing. "Out" is always from the centreline; on a mast, up and below follow the rake. */
function stepped(thing: Thing, steps: readonly Step[], outward: number): Point3 {
  let { x, y, z } = thing.at as { x: number; y: number; z: number }
  for (const { measure, direction } of steps) {
    const share = measure.dimension === 'share'
    if (share && direction === 'down' && thing.down) {
      ;({ x, y, z } = thing.down(measure.value))
      continue
    }
    const amount = share ? measure.value * (thing.half ?? 0) : measure.value
    switch (direction) {
      case 'aft':
        x += amount
        break
      case 'forward':
        x -= amount
        break
      case 'out':
        y = amount * outward
        break
      case 'port':
        y = -amount
        break
      case 'starboard':
        y = amount
        break
      case 'up':
        z += amount
        x += amount * (thing.rake ?? 0)
        break
      case 'below':
      case 'down':
        z -= amount
        x -= amount * (thing.rake ?? 0)
        break
    }
  }
  return point3(x, y, z)
}

/** The axis a step is along: saying an axis again replaces it. */
const axisOf = ({ direction }: Step): 'x' | 'y' | 'z' => {
  switch (direction) {
    case 'aft':
    case 'forward':
      return 'x'
    case 'out':
    case 'port':
    case 'starboard':
      return 'y'
    case 'up':
    case 'below':
    case 'down':
      return 'z'
  }
}

/** A place moved axis by axis: the steps said anew replace the old ones along the same axis. */
export function moved(place: Place, steps: readonly Step[]): Place {
  const anew = new Set(steps.map(axisOf))
  return { ...place, steps: [...place.steps.filter(step => !anew.has(axisOf(step))), ...steps] }
}
