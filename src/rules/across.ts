import type { BelayingPoint, Place, Rail, Rig } from '../rig/index.ts'

/** The rail that mirrors one, where the text says a rail on both sides at once. */
export function railAcross(rig: Rig, rail: Rail): Rail | undefined {
  if (!rail.mirrored) return undefined
  return rig.railAt.get(`${rail.mark}-${rail.lie === 'port' ? 'S' : 'P'}`)
}

/**
 * The place across from one: the same pin of the mirror rail or, on an athwart beam, as many from the other end;
 * round a band, as many from right forward.
 */
export function placeAcross(rig: Rig, place: Place | BelayingPoint): Place | undefined {
  const rail = rig.railAt.get(place.rail)
  if (!rail) return undefined
  const count = rail.places.length
  if (rail.lie === 'athwart') return rail.places[count - place.number]
  if (rail.lie === 'round') return rail.places[(count + 1 - place.number) % count]
  return railAcross(rig, rail)?.places[place.number - 1]
}

/** The same point on the other side of the centreline, whether or not anything stands there. */
export function mirrored(place: BelayingPoint): BelayingPoint {
  if (!place.at) return place
  return { ...place, at: { ...place.at, y: -place.at.y as typeof place.at.y } }
}
