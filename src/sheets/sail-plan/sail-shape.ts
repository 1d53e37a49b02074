import { missingCorners, type SailFigures } from '../../reckon/index.ts'
import type { Mast, Rig, Sail, Spar } from '../../rig/index.ts'
import { type Shape, shapeOf } from '../clip.ts'
import { type Curve, flattened } from '../plane.ts'
import type { PathStep, Point } from '../sheet.ts'
import { isSober, isSoberPoint } from './sober.ts'
import { curveStep, moveTo } from './strokes.ts'
import type { View } from './view.ts'

export type EdgeName = 'head' | 'leech' | 'foot' | 'luff'

/** One edge of a sail, as drawn: a curve from corner to corner. A square sail has two leeches. */
export interface SailEdge {
  readonly name: EdgeName
  readonly curve: Curve
}

/** A sail as it lies on the plan, in millimetres. */
export interface SailShape {
  readonly sail: Sail
  /** Its edges in order round the sail; the last ends where the first begins. */
  readonly edges: readonly SailEdge[]
  /** The closed outline. */
  readonly steps: readonly PathStep[]
  readonly shape: Shape
  readonly corners: readonly Point[]
  readonly centroid: Point
  /** Where its name had best stand: where the text says, or else on the centroid. */
  readonly home: Point
}

/** Hollow of a square sail's leeches, as a share of its mean half breadth. */
export const squareLeechHollow = 0.02
/** Hollow of a fore-and-aft sail's leech, as a share of the leech's length. */
export const leechHollow = 0.018
/** Round of a fore-and-aft sail's foot, in metres for each metre of waterline. */
export const footRound = 0.3 / 50

/**
 * The sail's outline on paper. Squares lie flat in the paper's plane about the middle line of their yards. Undefined
 * where reckoning found no area, or a measure that no ship has.
 */
export function sailShape(
  sail: Sail,
  figures: SailFigures | undefined,
  rig: Rig,
  view: View,
): SailShape | undefined {
  if (!figures?.area.known || !figures.centroid.known || !isSoberPoint(figures.centroid.value))
    return undefined
  const edges = edgesOf(sail, rig)?.map(edge => onPaper(edge, view))
  const first = edges?.[0]
  if (!edges || !first) return undefined
  const steps: readonly PathStep[] = [
    moveTo(first.curve[0]),
    ...edges.map(({ curve }) => curveStep(curve)),
    ['Z'],
  ]
  const centroid = figures.centroid.value
  const corners = edges.map(({ curve }) => curve[0])
  const middleX = sail.kind === 'fore-and-aft' ? undefined : mean(corners.map(corner => corner.x))
  const at = view.at(centroid.x, centroid.z)
  const middle = { x: middleX ?? at.x, y: at.y }
  return {
    sail,
    edges,
    steps,
    shape: shapeOf(flattened(steps)),
    corners,
    centroid: middle,
    home: sail.nameAt && isSoberPoint(sail.nameAt) ? view.at(sail.nameAt.x, sail.nameAt.z) : middle,
  }
}

/** An edge in metres: from one place to another, its middle bowed to the right hand of the way by `bow`. */
interface Edge {
  readonly name: EdgeName
  readonly from: Place
  readonly to: Place
  readonly bow: Place
}

interface Place {
  readonly x: number
  readonly z: number
}

function edgesOf(sail: Sail, rig: Rig): readonly Edge[] | undefined {
  switch (sail.kind) {
    case 'square':
      return squareEdges(sail, rig)
    case 'fore-and-aft':
      return foreAndAftEdges(sail, rig)
    case 'studdingsail':
      return studdingsailEdges(sail)
  }
}

/** Turned flat into the paper's plane like its yard: the one on the forward arm is drawn, for both. */
function studdingsailEdges({
  corners,
}: Extract<Sail, { kind: 'studdingsail' }>): readonly Edge[] | undefined {
  const places = corners.map(({ at }) => ({ x: at.x - at.y, z: at.z as number }))
  if (places.length < 4 || !places.every(isSoberPoint)) return undefined
  const names: readonly EdgeName[] = ['foot', 'leech', 'head', 'leech']
  return places.map(
    (from, i): Edge => ({ name: names[i] ?? 'leech', from, to: places[(i + 1) % 4] ?? from, bow: none }),
  )
}

function squareEdges(sail: Extract<Sail, { kind: 'square' }>, rig: Rig): readonly Edge[] | undefined {
  const { head, foot, roach } = sail
  const x = middleLine(sail, rig)
  if (!head || !foot || !x) return undefined
  const numbers = [head.width, head.height, foot.width, foot.height, roach, x.head, x.foot]
  if (!numbers.every(isSober)) return undefined
  const corner = (level: 'head' | 'foot', side: 1 | -1): Place => {
    const { width, height } = level === 'head' ? head : foot
    return { x: x[level] + (side * width) / 2, z: height }
  }
  const hollow = (squareLeechHollow * (head.width + foot.width)) / 4
  return [
    { name: 'head', from: corner('head', -1), to: corner('head', 1), bow: { x: 0, z: 0 } },
    { name: 'leech', from: corner('head', 1), to: corner('foot', 1), bow: { x: -hollow, z: 0 } },
    { name: 'foot', from: corner('foot', 1), to: corner('foot', -1), bow: { x: 0, z: roach } },
    { name: 'leech', from: corner('foot', -1), to: corner('head', -1), bow: { x: hollow, z: 0 } },
  ]
}

/**
 * Where the middle of head and foot stand: under the yard the head is bent to, and so far down the mast's
 * rake. A yard without geometry leaves the sail upright in its own plane.
 */
function middleLine(
  sail: Extract<Sail, { kind: 'square' }>,
  { sparAt, mastAt }: Rig,
): { readonly head: number; readonly foot: number } | undefined {
  const yard: Spar | undefined = sparAt.get(sail.yard)
  const mast: Mast | undefined = sail.mast === undefined ? undefined : mastAt.get(sail.mast)
  const rake = mast && Number.isFinite(mast.rake) && Math.abs(mast.rake) < 0.6 ? Math.tan(mast.rake) : 0
  const middle = yard?.kind === 'yard' ? yard.middle?.x : undefined
  const head = middle ?? sail.x
  if (head === undefined || !sail.head || !sail.foot) return undefined
  return { head, foot: head + rake * (sail.foot.height - sail.head.height) }
}

const none: Place = { x: 0, z: 0 }

function foreAndAftEdges(
  sail: Extract<Sail, { kind: 'fore-and-aft' }>,
  { vessel }: Rig,
): readonly Edge[] | undefined {
  if (missingCorners(sail).length > 0) return undefined
  const corners = sail.corners.map(({ at }) => ({ x: at.x as number, z: at.z as number }))
  if (!corners.every(isSoberPoint)) return undefined
  const middle = { x: mean(corners.map(({ x }) => x)), z: mean(corners.map(({ z }) => z)) }
  const names: readonly EdgeName[] =
    corners.length === 3 ? ['foot', 'leech', 'luff'] : ['foot', 'leech', 'head', 'luff']
  return corners.map((from, i): Edge => {
    const to = corners[(i + 1) % corners.length] ?? from
    const name = names[i] ?? 'luff'
    const length = Math.hypot(to.x - from.x, to.z - from.z)
    const round = footRound * Math.min(vessel.waterline ?? 25, 200)
    if (name === 'leech') return { name, from, to, bow: across(from, to, middle, leechHollow * length) }
    if (name === 'foot')
      return { name, from, to, bow: across(from, to, middle, -Math.min(round, 0.12 * length)) }
    return { name, from, to, bow: none }
  })
}

/** So far square to the edge, toward the middle of the sail. */
function across(from: Place, to: Place, middle: Place, by: number): Place {
  const [dx, dz] = [to.x - from.x, to.z - from.z]
  const length = Math.hypot(dx, dz)
  if (length === 0) return none
  const side = Math.sign(dx * (middle.z - from.z) - dz * (middle.x - from.x)) || 1
  return { x: (-dz / length) * by * side, z: (dx / length) * by * side }
}

/** A parabola through both ends whose middle is bowed: as a cubic, its two points stand 4/3 of the bow off the chord. */
function onPaper({ name, from, to, bow }: Edge, { at }: View): SailEdge {
  const on = (share: number): Point =>
    at(from.x + (to.x - from.x) * share + (4 / 3) * bow.x, from.z + (to.z - from.z) * share + (4 / 3) * bow.z)
  return { name, curve: [at(from.x, from.z), on(1 / 3), on(2 / 3), at(to.x, to.z)] }
}

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((a, b) => a + b, 0) / Math.max(1, numbers.length)
