import type { Hull, ProfilePoint, Rig } from '../../rig/index.ts'
import { isSober } from './sober.ts'

/** x aft of the forward perpendicular, z above the waterline, in metres. */
export interface Place {
  readonly x: number
  readonly z: number
}

/** All the numbers that a hull's profile is drawn from, in metres: said by the text, or else by rule. */
export interface HullLines {
  /** Between perpendiculars. */
  readonly length: number
  readonly draught: number
  readonly lowestSheer: Place
  readonly bowSheer: number
  readonly sternSheer: number
  readonly bulwark: number
  readonly stemHead: Place
  /** Undefined where she has no head: then no cutwater is drawn. */
  readonly billet: Place | undefined
  readonly forefoot: number
  readonly keelDrag: number
  readonly sternpost: number
  readonly knuckle: Place
  readonly taffrail: Place
  readonly dolphinStriker: Place | undefined
  readonly forecastle: Forecastle | undefined
  /** False where the text says nothing of her hull, and the whole of it is by rule. */
  readonly isRecorded: boolean
}

export interface Forecastle {
  readonly from: number
  readonly to: number
  readonly deck: number
  readonly rail: number | undefined
}

/**
 * The hull's numbers, each from the text or by rule from her length. The rules are common practice, no source:
 * they give a plain merchant hull that nobody should take for a survey. Undefined where nothing tells her length.
 */
export function hullLines(rig: Rig): HullLines | undefined {
  const { hull, vessel } = rig
  const length = sober(vessel.betweenPerpendiculars) ?? sober(vessel.waterline)
  if (length === undefined || length <= 0) return undefined

  const low = place(hull?.lowestSheer) ?? { x: 0.54 * length, z: deckHeight(rig) ?? 0.055 * length }
  const bowSheer = sober(hull?.bowSheer) ?? low.z + 0.03 * length
  const sternSheer = sober(hull?.sternSheer) ?? low.z + 0.016 * length
  const bulwark = sober(hull?.bulwark) ?? Math.min(1.2, 0.45 + 0.014 * length)
  const taffrail = place(hull?.taffrail) ?? {
    x: taffrailFromSpars(rig) ?? 1.045 * length,
    z: sternSheer + bulwark + 0.006 * length,
  }
  const counter = Math.max(0.2, (taffrail.x - length) * 0.6)
  return {
    length,
    draught: Math.max(0.1, sober(vessel.draught) ?? 0.09 * length),
    lowestSheer: low,
    bowSheer,
    sternSheer,
    bulwark,
    stemHead: place(hull?.stemHead) ?? { x: -0.04 * length, z: bowSheer + 0.5 * bulwark },
    billet: place(hull?.billet),
    forefoot: sober(hull?.forefoot) ?? 0.07 * length,
    keelDrag: sober(hull?.keelDrag) ?? 0,
    sternpost: sober(hull?.sternpost) ?? 0.985 * length,
    knuckle: place(hull?.knuckle) ?? { x: length + counter, z: 0.75 * sternSheer },
    taffrail,
    dolphinStriker: place(hull?.dolphinStriker),
    forecastle: forecastleOf(hull),
    isRecorded: hull !== undefined,
  }
}

/** Height of the deck at the side, by two parabolas that meet at the lowest sheer. */
export function sheerAt({ lowestSheer: low, bowSheer, sternSheer, taffrail }: HullLines, x: number): number {
  const isForward = x < low.x
  const reach = isForward ? low.x : taffrail.x - low.x
  const end = isForward ? bowSheer : sternSheer
  return reach > 0 ? low.z + (end - low.z) * ((x - low.x) / reach) ** 2 : low.z
}

/** Height of the cap rail: the bulwark above the sheer, eased aft into the taffrail. */
export function capAt(lines: HullLines, x: number): number {
  const { taffrail, lowestSheer, bulwark } = lines
  const easesFrom = (lowestSheer.x + taffrail.x) / 2
  const lift = taffrail.z - (sheerAt(lines, taffrail.x) + bulwark)
  const share = taffrail.x > easesFrom ? Math.max(0, (x - easesFrom) / (taffrail.x - easesFrom)) : 0
  return sheerAt(lines, x) + bulwark + lift * share * share
}

const sober = (n: number | undefined): number | undefined => (n !== undefined && isSober(n) ? n : undefined)

const place = (point: ProfilePoint | undefined): Place | undefined =>
  point && isSober(point.x) && isSober(point.z) ? point : undefined

/** The lowest named deck; else the rails' height less the 1.1 m that a rail stands above her deck. */
function deckHeight({ vessel, rails }: Rig): number | undefined {
  const decks = vessel.decks.map(deck => deck.height).filter(isSober)
  if (decks.length > 0) return lowest(decks)
  const heights = rails.flatMap(rail => rail.places.flatMap(({ at }) => (at && isSober(at.z) ? [at.z] : [])))
  return heights.length > 0 ? lowest(heights) - 1.1 : undefined
}

const lowest = (heights: readonly number[]): number => heights.reduce((a, b) => Math.min(a, b))

/** The length over spars reaches from the bowsprit's end to the taffrail. */
function taffrailFromSpars({ vessel, spars }: Rig): number | undefined {
  const overSpars = sober(vessel.overSpars)
  const ends = spars.flatMap(spar => (spar.kind === 'bowsprit' && spar.outer ? [spar.outer.x] : []))
  const end = ends.filter(isSober).reduce<number>((a, b) => Math.min(a, b), 0)
  const aft = overSpars === undefined ? undefined : end + overSpars
  const length = vessel.betweenPerpendiculars ?? vessel.waterline ?? 0
  return aft !== undefined && aft > length && aft < 1.2 * length ? aft : undefined
}

function forecastleOf(hull: Hull | undefined): Forecastle | undefined {
  const forecastle = hull?.forecastle
  if (!forecastle) return undefined
  const { from, to, deck } = forecastle
  return [from, to, deck].every(isSober) && to > from
    ? { from, to, deck, rail: sober(forecastle.rail) }
    : undefined
}
