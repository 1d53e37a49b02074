import { type Figure, metres, type Point3, point3, squareMetres } from '../../../src/measure/index.ts'
import { leadOf } from '../../../src/reckon/sails/balance.ts'
import {
  centreOfEffort,
  type Effort,
  leadRanges,
  polygonFigure,
  sailFigures,
} from '../../../src/reckon/sails/index.ts'
import type { SquareSail } from '../../../src/rig/index.ts'
import { exact, type PublishedRow, type Topic } from './row.ts'

const plane = 'plane geometry, any text on mensuration'
const moments = 'method of moments: Encyclopaedia Britannica, 9th ed., Sail'
const value = <Q>(figure: Figure<Q>): Q => {
  if (!figure.known) throw new Error(figure.because)
  return figure.value
}

type Corners = readonly (readonly [number, number])[]
const figureOf = (corners: Corners) => {
  const figure = polygonFigure(corners.map(([x, z]) => ({ x, z })))
  if (!figure) throw new Error('no figure')
  return figure
}

const row = (
  fact: string,
  source: string,
  status: PublishedRow['status'],
  published: number,
  computed: number,
  within: PublishedRow['within'] = { amount: 0.001 },
  unit = '',
): PublishedRow => ({ fact, source, status, kind: 'computed', published, computed, unit, within })

function polygon(
  fact: string,
  source: string,
  status: PublishedRow['status'],
  corners: Corners,
  [area, x, z]: readonly [number, number, number],
): readonly PublishedRow[] {
  const figure = figureOf(corners)
  return [
    row(`${fact}: area`, source, status, area, figure.area),
    row(`${fact}: centroid along`, source, status, x, figure.centroid.x),
    row(`${fact}: centroid up`, source, status, z, figure.centroid.z),
  ]
}

const square = (head: number, foot: number, depth: number): SquareSail => ({
  kind: 'square',
  class: 'topsail',
  name: 'topsail',
  label: 'Topsail',
  short: undefined,
  foreign: false,
  nameAt: undefined,
  mast: undefined,
  gear: undefined,
  yard: 'yard',
  footYard: undefined,
  shackled: [],
  toSet: undefined,
  toDouse: undefined,
  reefs: [],
  cloth: { number: undefined, list: undefined, width: undefined },
  x: metres(0),
  head: { width: metres(head), height: metres(depth) },
  foot: { width: metres(foot), height: metres(0) },
  roach: metres(0),
  conjectural: false,
  credited: undefined,
  span: { source: '', start: 0, end: 0 },
})
function squareSail(fact: string, sail: SquareSail, area: number, up: number): readonly PublishedRow[] {
  const figures = sailFigures(sail)
  return [
    row(`${fact}: area`, plane, 'from memory', area, value(figures.area), exact),
    row(`${fact}: centroid above the foot`, plane, 'from memory', up, value(figures.centroid).z),
  ]
}

const gaffSail: Corners = [
  [0, 0],
  [10, 1],
  [7, 13],
  [0, 8],
]
type Corner = Corners[number]
const [tack, clew, peak, throat] = gaffSail as readonly [Corner, Corner, Corner, Corner]
/** Where the line through two centroids crosses the line through two others. */
function crossing(lines: readonly [Corner, Corner, Corner, Corner]) {
  const [[ax, az], [bx, bz], [cx, cz], [dx, dz]] = lines
  const t = ((cx - ax) * (dz - cz) - (cz - az) * (dx - cx)) / ((bx - ax) * (dz - cz) - (bz - az) * (dx - cx))
  return { x: ax + t * (bx - ax), z: az + t * (bz - az) }
}
const centroidOf = (...corners: Corners): readonly [number, number] => {
  const { centroid } = figureOf(corners)
  return [centroid.x, centroid.z]
}
const hamernik = 'T. Hamernik, CE for four-sided sails, Duckworks column 2005'
const drawn = crossing([
  centroidOf(tack, clew, peak),
  centroidOf(tack, peak, throat),
  centroidOf(throat, clew, peak),
  centroidOf(throat, tack, clew),
])
const shortcut = crossing([centroidOf(tack, clew, peak), centroidOf(tack, peak, throat), tack, peak])

const singleSails: readonly PublishedRow[] = [
  ...polygon(
    'right triangle, foot 6, luff 9',
    plane,
    'from memory',
    [
      [0, 0],
      [6, 0],
      [0, 9],
    ],
    [27, 2, 3],
  ),
  ...polygon(
    'triangle (0,0) (12,1) (2,10)',
    plane,
    'from memory',
    [
      [0, 0],
      [12, 1],
      [2, 10],
    ],
    [59, 14 / 3, 11 / 3],
  ),
  ...squareSail('topsail, head 10, foot 14, depth 9', square(10, 14, 9), 108, 4.25),
  ...squareSail('course, head 18, foot 17, depth 8', square(18, 17, 8), 140, 4.038),
  ...polygon('gaff sail (0,0) (10,1) (7,13) (0,8)', plane, 'from memory', gaffSail, [89.5, 4.624, 5.397]),
  row('the same by drawing both diagonals: along', hamernik, 'read', drawn.x, figureOf(gaffSail).centroid.x),
  row('the same by drawing both diagonals: up', hamernik, 'read', drawn.z, figureOf(gaffSail).centroid.z),
  row('the same by drawing, printed: along', hamernik, 'read', 4.624, drawn.x),
  row('the same by drawing, printed: up', hamernik, 'read', 5.397, drawn.z),
  {
    ...row(
      'a shortcut in print crosses one diagonal only: wrong by',
      'center of effort, a canoe page',
      'read',
      1.5,
      0,
    ),
    computed: Math.hypot(
      shortcut.x - figureOf(gaffSail).centroid.x,
      shortcut.z - figureOf(gaffSail).centroid.z,
    ),
    within: { amount: 0.05 },
    kind: 'policy',
  },
  row(
    'square sail constructed from foot 14, depth 9 and area 108: area of what comes out',
    'T. D. Wilson, An Outline of Ship Building, 1873, ch. XVIII, p. 81 (title from memory)',
    'read',
    108,
    value(sailFigures(square((14 * ((2 * 108) / 14 - 9)) / 9, 14, 9)).area),
    exact,
  ),
  row(
    'triangle constructed from foot 6 and area 27: area of what comes out',
    'T. D. Wilson, An Outline of Ship Building, 1873, ch. XVIII, rule II',
    'read',
    27,
    figureOf([
      [0, 0],
      [6, 0],
      [2, 27 / 3],
    ]).area,
    exact,
  ),
  row(
    "sailmaker's area: depth by the mean of head and foot",
    'D. Steel, Elements of Sailmaking, 1794; R. Kipping, Sails and Sailmaking',
    'from memory',
    ((10 + 14) / 2) * 9,
    value(sailFigures(square(10, 14, 9)).area),
    { share: 0.02 },
  ),
]

/** Area, x forward of midships and z above the water; the program's x runs aft. */
const sail = (area: number, forward: number, up = 0): Effort => ({
  area: squareMetres(area),
  at: point3(-forward, 0, up),
})
const jib = sail(60, 19, 14)
const others = [
  sail(130, 9, 7),
  sail(108, 9.3, 14.5),
  sail(150, -4, 7.2),
  sail(120, -4.2, 15.5),
  sail(95, -14, 8),
]
const centre = (efforts: readonly Effort[]): Point3 => value(centreOfEffort(efforts))
const lead = value(
  leadOf(
    { vessel: { lateralCentre: point3(-0.3, 0, -1.5), waterline: metres(30) } } as never,
    centre([jib, ...others]),
  ),
)
const parts = (fore: number, main: number, mizzen: number) =>
  -centre([sail(40 * fore, 5), sail(50 * main, -2), sail(20 * mizzen, -6)]).x

const range = (rig: string, low: number, high: number): readonly PublishedRow[] => {
  const found = leadRanges.find(one => one.rig === rig)
  return (['low', 'high'] as const).map(end => ({
    fact: `lead of a ${rig}, ${end === 'low' ? 'at least' : 'at most'}: shown beside the lead, never a finding`,
    source: 'D. Gerr, The Nature of Boats',
    status: 'second-hand',
    kind: 'policy',
    published: end === 'low' ? low : high,
    computed: (found?.[end] ?? Number.NaN) * 100,
    unit: '%',
    within: exact,
  }))
}

const balance: readonly PublishedRow[] = [
  row('six sails: centre of effort forward', moments, 'from memory', 1.328, -centre([jib, ...others]).x),
  row('six sails: centre of effort up', moments, 'from memory', 10.582, centre([jib, ...others]).z),
  row('the jib taken in: centre of effort forward', moments, 'from memory', -0.431, -centre(others).x),
  row('the jib taken in: centre of effort up', moments, 'from memory', 10.242, centre(others).z),
  row(
    'the jib taken in: the centre goes aft by',
    moments,
    'from memory',
    1.758,
    centre(others).x - centre([jib, ...others]).x,
  ),
  row('lateral centre 0.30 forward: lead', moments, 'from memory', 1.028, lead.metres),
  row(
    'the same, waterline 30: lead',
    moments,
    'from memory',
    3.43,
    value(lead.share) * 100,
    { amount: 0.01 },
    '%',
  ),
  row(
    'three parts, each whole: centre forward',
    'C. A. Marchaj, Sailing Theory and Practice, 1964, worked',
    'second-hand',
    -0.182,
    parts(1, 1, 1),
  ),
  row(
    'the mizzen halved: centre forward',
    'Larsson and Eliasson, Principles of Yacht Design, worked',
    'second-hand',
    0.4,
    parts(1, 1, 0.5),
  ),
  row(
    'fore triangle by 1.7, mizzen halved: centre forward',
    'C. A. Marchaj, Sailing Theory and Practice, 1964, worked',
    'second-hand',
    1.406,
    parts(1.7, 1, 0.5),
  ),
  ...range('yacht: schooner', 7, 12),
  ...range('yacht: ketch', 11, 14),
  ...range('yacht: yawl', 12, 15),
  ...range('yacht: sloop or cutter', 13, 17),
]

export const sails: Topic = {
  title: 'Sails and balance',
  rows: [...singleSails, ...balance],
  passedOver: [
    {
      fact: 'Racing measurement of 1895',
      source: "Harper's Round Table, 3 Sept 1895",
      because: 'a rating of yachts: it measures spars and no sail',
    },
    {
      fact: 'A main course may hold 1,000 running yards of canvas, a suit over 10,000',
      source: 'Encyclopaedia Britannica, 9th ed., Sail, vol. 21 p. 154',
      because: 'an order of magnitude for a ship that is not given',
    },
    {
      fact: 'Long-keel ketch 11 to 15 %; ketch about 20 % without rudder and half the mizzen; masthead sloop 5 to 9 %',
      source: "Larsson and Eliasson; Skene's Elements of Yacht Design; second-hand and from memory",
      because: 'told under other conventions, or of fin keels: one list of ranges is shown, with its own',
    },
    {
      fact: 'Weighted centre at 28 to 38 % of the waterline from the stem; all methods span 4 to 17 %',
      source: 'C. A. Marchaj, 1964, second-hand; a sailmaker on balance, 2020',
      because: 'judgements of yachts, under weights that the program does not use',
    },
    {
      fact: 'An effort before the lateral centre gives less weather helm',
      source: 'E. F. Knight, Small-Boat Sailing, p. 39',
      because: 'a sign: the page of balance/lead-out-of-range says it, and its tests hold it',
    },
  ],
}
