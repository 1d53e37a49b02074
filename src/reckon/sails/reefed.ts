import {
  type Figure,
  known,
  metres,
  type Point3,
  point3,
  squareMetres,
  unknown,
} from '../../measure/index.ts'
import type { ForeAndAftSail, Sail, SquareSail } from '../../rig/index.ts'
import { type SailFigures, sailFigures } from './area.ts'
import { type PlanePoint, polygonFigure } from './polygon.ts'

/** A sail with reefs taken in it: what is left of its area, and where that pulls. `area.md` has the method. */
export function reefedFigures(sail: Sail, reefs: number): SailFigures {
  if (reefs === 0) return sailFigures(sail)
  const reef = sail.reefs.toSorted((a, b) => a.depth - b.depth)[reefs - 1]
  const whole = sailFigures(sail)
  if (!whole.area.known) return whole
  if (!reef) return neither(`The ${sail.name} has not so many reefs.`)
  if (sail.kind === 'square' && reef.from === 'head') return squareReefed(sail, reef.depth)
  if (sail.kind === 'fore-and-aft' && reef.from === 'foot') return footReefed(sail, reef.depth)
  return neither(`A reef of the ${sail.name} is told from its ${reef.from}.`)
}

/** The yard comes down by the reef, and the reef band takes the place of the head. */
function squareReefed(sail: SquareSail, depth: number): SailFigures {
  const { head, foot } = sail
  if (!head || !foot) return sailFigures(sail)
  const share = depth / (head.height - foot.height)
  const width = metres(head.width + (foot.width - head.width) * share)
  return sailFigures({ ...sail, head: { width, height: metres(head.height - depth) } })
}

/** The foot is rolled up to the band, square above it, and the sail is lowered until the new tack is where the old one was. */
function footReefed(sail: ForeAndAftSail, depth: number): SailFigures {
  const corners = sail.corners.map(({ at }) => ({ x: at.x, z: at.z }))
  const [tack, clew] = corners
  const last = corners.at(-1)
  if (!tack || !clew || !last) return sailFigures(sail)
  const foot = Math.hypot(clew.x - tack.x, clew.z - tack.z)
  const side = Math.sign((clew.x - tack.x) * (last.z - tack.z) - (clew.z - tack.z) * (last.x - tack.x))
  /** How far a point stands above the band, square to the foot. */
  const above = ({ x, z }: PlanePoint) =>
    (side * ((clew.x - tack.x) * (z - tack.z) - (clew.z - tack.z) * (x - tack.x))) / foot - depth
  const left = corners.flatMap((point, i) => {
    const next = corners[(i + 1) % corners.length] ?? point
    const [here, there] = [above(point), above(next)]
    const share = here / (here - there)
    const crossing = { x: point.x + (next.x - point.x) * share, z: point.z + (next.z - point.z) * share }
    return [...(here >= 0 ? [point] : []), ...(here * there < 0 ? [crossing] : [])]
  })
  const figure = polygonFigure(left)
  // Along the luff, from the last corner to the tack, lies the new tack.
  const share = above(last) / (above(last) - above(tack))
  const newTack = { x: last.x + (tack.x - last.x) * share, z: last.z + (tack.z - last.z) * share }
  if (!figure || !(above(last) > 0)) return neither(`The reef of the ${sail.name} lies above its luff.`)
  const { centroid } = figure
  return {
    area: known(squareMetres(figure.area)),
    centroid: known(point3(centroid.x + tack.x - newTack.x, 0, centroid.z + tack.z - newTack.z)),
  }
}

const neither = (because: string): { area: Figure<never>; centroid: Figure<Point3> } => ({
  area: unknown(because),
  centroid: unknown(because),
})
