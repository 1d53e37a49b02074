import type { BelayingPoint, Place, Rig, Side } from '../rig/index.ts'
import { apart } from './distance.ts'
import { listed, railName } from './naming.ts'

/** Free pins further than this are no help to a hand looking for one. */
const near = 6
const most = 4

/**
 * The free pins nearest to a place, in words: 'fore rail, port, pins 18, 19 and 20'. On the side asked for, if
 * one is; four at most; undefined where none is near.
 */
export function freePinsNear(rig: Rig, place: Place | BelayingPoint, side?: Side): string | undefined {
  const found = rig.rails
    .filter(rail => rail.places.length > 1)
    .flatMap(rail => rail.places)
    .filter(other => other.lines.length === 0 && (!side || other.side === side))
    .flatMap(other => {
      const far = distance(place, other)
      return far !== undefined && far <= near ? [{ other, far }] : []
    })
    .sort((a, b) => a.far - b.far)
    .slice(0, most)
  return found.length > 0
    ? inWords(
        rig,
        found.map(({ other }) => other),
      )
    : undefined
}

/** Along the deck or, on an unmeasured rail, by the count of pins as though they stood a foot apart. */
function distance(a: Place | BelayingPoint, b: Place): number | undefined {
  return apart(a, b) ?? (a.rail === b.rail ? Math.abs(a.number - b.number) * 0.3 : undefined)
}

function inWords(rig: Rig, places: readonly Place[]): string {
  const byRail = new Map<string, Place[]>()
  for (const place of places) byRail.set(place.rail, [...(byRail.get(place.rail) ?? []), place])
  const rails = [...byRail].flatMap(([code, free]) => {
    const rail = rig.railAt.get(code)
    const pins = free.toSorted((a, b) => a.number - b.number).map(({ pin }) => pin)
    return rail ? [`${railName(rail)}, ${pins.length > 1 ? 'pins' : 'pin'} ${listed(pins)}`] : []
  })
  return rails.join('; ')
}
