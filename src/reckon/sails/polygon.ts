/** A point of a plane: for a sail, x aft and z up, in metres. */
export interface PlanePoint {
  readonly x: number
  readonly z: number
}

/** Area and centroid of a plane figure. */
export interface PlaneFigure {
  readonly area: number
  readonly centroid: PlanePoint
}

/**
 * Area and centroid of a plain polygon (no edge crosses another), by its signed triangles. The corners may run
 * either way round; the area is never negative. Undefined where the corners enclose nothing.
 */
export function polygonFigure(corners: readonly PlanePoint[]): PlaneFigure | undefined {
  const origin = corners[0]
  if (!origin) return undefined
  // Measured from the first corner, so that a small sail far from the origin loses no digits.
  const local = corners.map(corner => ({ x: corner.x - origin.x, z: corner.z - origin.z }))
  let twice = 0
  let momentX = 0
  let momentZ = 0
  local.forEach((a, i) => {
    const b = local[(i + 1) % local.length] ?? a
    const cross = a.x * b.z - b.x * a.z
    twice += cross
    momentX += (a.x + b.x) * cross
    momentZ += (a.z + b.z) * cross
  })
  if (!Number.isFinite(momentX / twice) || isSliver(twice, local)) return undefined
  return {
    area: Math.abs(twice) / 2,
    centroid: { x: origin.x + momentX / (3 * twice), z: origin.z + momentZ / (3 * twice) },
  }
}

/** Whether two edges of the polygon that are not neighbours cross or touch. */
export function edgesCross(corners: readonly PlanePoint[]): boolean {
  const edges = corners.map((corner, i) => [corner, corners[(i + 1) % corners.length] ?? corner] as const)
  return edges.some((edge, i) =>
    edges.some((other, j) => {
      const neighbours = j === i + 1 || (i === 0 && j === edges.length - 1)
      return j > i && !neighbours && segmentsMeet(edge, other)
    }),
  )
}

type Segment = readonly [PlanePoint, PlanePoint]

function segmentsMeet([a, b]: Segment, [c, d]: Segment): boolean {
  const sides = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)]
  const [abc = 0, abd = 0, cda = 0, cdb = 0] = sides
  if (sides.some(side => side !== 0)) return abc * abd <= 0 && cda * cdb <= 0
  return spansMeet(a.x, b.x, c.x, d.x) && spansMeet(a.z, b.z, c.z, d.z)
}

const turn = (a: PlanePoint, b: PlanePoint, c: PlanePoint): number =>
  Math.sign((b.x - a.x) * (c.z - a.z) - (b.z - a.z) * (c.x - a.x))

const spansMeet = (a: number, b: number, c: number, d: number): boolean =>
  Math.max(Math.min(a, b), Math.min(c, d)) <= Math.min(Math.max(a, b), Math.max(c, d))

/** Corners in one line, but for rounding: the area is nothing beside the square of the extent. */
function isSliver(twice: number, local: readonly PlanePoint[]): boolean {
  const extent = local.reduce((most, point) => Math.max(most, Math.abs(point.x), Math.abs(point.z)), 0)
  return Math.abs(twice) <= 1e-9 * extent * extent
}
