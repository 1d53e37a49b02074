import { type Curve, flattened } from '../plane.ts'
import type { PathStep, Point } from '../sheet.ts'
import { capAt, type HullLines, type Place } from './hull-lines.ts'
import { curveStep, lineTo, moveTo } from './strokes.ts'
import type { View } from './view.ts'

/** The hull's profile on paper. */
export interface HullShape {
  /** Above the waterline, closed: stem, top edge, transom, counter, waterline. */
  readonly topsides: readonly PathStep[]
  /** Below the waterline, closed: forefoot, keel, sternpost. */
  readonly underbody: readonly PathStep[]
  /** From the stem head aft to the taffrail: cap rail, and the forecastle's edge where she has one. */
  readonly topEdge: readonly Point[]
  readonly stem: Curve
  readonly counter: Curve
  readonly transom: Curve
  /** The whole outline, flattened. */
  readonly outline: readonly Point[]
  /** The outline below the waterline, flattened. */
  readonly under: readonly Point[]
  /** Where the sternpost cuts the waterline, and its heel. */
  readonly post: { readonly head: Place; readonly heel: Place }
}

/** Draws the hull's outline from her numbers. */
export function hullShape(lines: HullLines, view: View): HullShape {
  const { at } = view
  const { stemHead, knuckle, taffrail, draught, forefoot, keelDrag } = lines
  const post = {
    head: { x: lines.sternpost + 0.06 * draught, z: 0 },
    heel: { x: lines.sternpost, z: -draught },
  }
  const forward = Math.max(0.1, draught - keelDrag)
  const stem = curve(view, { x: 0, z: 0 }, [0, 0.36], [0.42, 0.72], stemHead)
  const transom = bowed(view, taffrail, knuckle, 0.05)
  const counter = curve(view, knuckle, [0.34, 0.52], [0.82, 0.86], post.head)
  const forefootCurve: Curve = [
    at(0, 0),
    at(0.07 * forefoot, -0.5 * forward),
    at(0.3 * forefoot, -forward),
    at(forefoot, -forward),
  ]
  const topEdge = topEdgeOf(lines).map(({ x, z }) => at(x, z))
  const topsides: readonly PathStep[] = [
    moveTo(at(0, 0)),
    curveStep(stem),
    ...topEdge.slice(1).map(lineTo),
    curveStep(transom),
    curveStep(counter),
    ['Z'],
  ]
  const underbody: readonly PathStep[] = [
    moveTo(at(0, 0)),
    curveStep(forefootCurve),
    lineTo(at(post.heel.x, post.heel.z)),
    lineTo(at(post.head.x, post.head.z)),
    ['Z'],
  ]
  return {
    topsides,
    underbody,
    topEdge,
    stem,
    counter,
    transom,
    outline: [...flattened(topsides), ...flattened(underbody)],
    under: flattened(underbody),
    post,
  }
}

/** A curve between two places by two points at shares of the way, each share along x and along z. */
function curve(
  { at }: View,
  from: Place,
  near: readonly [number, number],
  far: readonly [number, number],
  to: Place,
): Curve {
  const on = ([along, up]: readonly [number, number]) =>
    at(from.x + (to.x - from.x) * along, from.z + (to.z - from.z) * up)
  return [at(from.x, from.z), on(near), on(far), at(to.x, to.z)]
}

/** A curve bowed aft of its chord by a share of its length. */
function bowed({ at }: View, from: Place, to: Place, share: number): Curve {
  const [dx, dz] = [to.x - from.x, to.z - from.z]
  const bow = { x: -dz * share * (4 / 3), z: dx * share * (4 / 3) }
  const on = (t: number) => at(from.x + dx * t + bow.x, from.z + dz * t + bow.z)
  return [at(from.x, from.z), on(1 / 3), on(2 / 3), at(to.x, to.z)]
}

/** Rise of the forecastle's planksheer above its deck. */
const waterway = 0.3

function topEdgeOf(lines: HullLines): readonly Place[] {
  const { stemHead, taffrail, forecastle } = lines
  const bow = forecastle ? forecastle.to : bowOfCap(lines)
  const pieces = 48
  const cap = Array.from({ length: pieces + 1 }, (_, i) => {
    const x = bow + ((taffrail.x - bow) * i) / pieces
    return { x, z: i === pieces ? taffrail.z : capAt(lines, x) }
  })
  return [stemHead, ...(forecastle ? forecastleEdge(lines, forecastle.deck, forecastle.to) : []), ...cap]
}

/** Where the cap rail ends forward: at the stem head, or a little abaft it where the bulwark stands above it. */
function bowOfCap(lines: HullLines): number {
  const { stemHead } = lines
  return capAt(lines, stemHead.x) > stemHead.z + 0.1 ? 0.62 * stemHead.x : stemHead.x
}

/** The forecastle's edge from near the stem head aft to its break, rising forward. */
export function forecastleEdge({ stemHead }: HullLines, deck: number, to: number): readonly Place[] {
  const pieces = 12
  return Array.from({ length: pieces }, (_, i) => {
    const share = (i + 1) / pieces
    const x = stemHead.x + (to - stemHead.x) * share
    const low = deck + waterway
    return { x, z: low + (stemHead.z - low) * (1 - share) ** 1.5 }
  })
}
