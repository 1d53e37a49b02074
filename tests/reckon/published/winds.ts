import { metres, metresPerSecond, radians } from '../../../src/measure/index.ts'
import {
  danasFan,
  fanByRule,
  fanStep,
  sharpestEver,
  usualLimit,
  windAloft,
} from '../../../src/reckon/brace/index.ts'
import {
  apparentWind,
  beaufort,
  forceOf,
  knot,
  landExponent,
  middleOf,
  roughnessUnder,
  seaExponent,
  trueWind,
  windAt,
  windByLog,
  windPressure,
} from '../../../src/reckon/wind/index.ts'
import { type PublishedRow, row, type Topic } from './row.ts'

const degree = Math.PI / 180
const angle = (degrees: number) => radians(degrees * degree)
const kn = (knots: number) => metresPerSecond(knots * knot)
/** Pascals in a pound on the square foot; metres a second in a mile an hour. */
const psf = 47.880259
const mph = 0.44704

const scale =
  'Beaufort table in metres a second, delta-s.org; Met Office form in knots, infotextmanuscripts.org'

/** From, to, in m/s; from, to and mean in knots; the middle of the formula in m/s, and its pressure in pascals. */
const forces = [
  [0.3, 1.5, 1, 3, 2, 0.84, 0.4],
  [1.6, 3.3, 4, 6, 5, 2.36, 3.4],
  [3.4, 5.4, 7, 10, 9, 4.34, 11.6],
  [5.5, 7.9, 11, 16, 13, 6.69, 27.4],
  [8, 10.7, 17, 21, 19, 9.35, 53.5],
  [10.8, 13.8, 22, 27, 24, 12.29, 92.5],
  [13.9, 17.1, 28, 33, 30, 15.48, 146.8],
  [17.2, 20.7, 34, 40, 37, 18.92, 219.2],
  [20.8, 24.4, 41, 47, 44, 22.57, 312.1],
  [24.5, 28.4, 48, 55, 52, 26.44, 428.1],
  [28.5, 32.6, 56, 63, 60, 30.5, 569.8],
] as const

const limits = (from: number, to: number, low: number, high: number, mean: number | undefined) =>
  `${from} to ${to} m/s, ${low} to ${high} kn, mean ${mean} kn`

const beaufortRows: readonly PublishedRow[] = forces.flatMap(
  ([from, to, low, high, mean, middle, pressure], i) => {
    const force = i + 1
    const ours = beaufort[force]
    if (!ours) return []
    const found = limits(ours.from, ours.to, ours.knots.from, ours.knots.to, ours.knots.mean)
    return [
      row(`force ${force}: limits`, scale, limits(from, to, low, high, mean), found, '', { kind: 'tabled' }),
      row(`force ${force}: the wind in the middle`, scale, middle, middleOf(force), 'm/s', {
        within: { share: 0.05 },
      }),
      row(`force ${force}: pressure of that wind`, scale, pressure, windPressure(middleOf(force)), 'Pa', {
        within: { share: 0.1 },
      }),
      row(
        `force ${force}: to which its lowest and highest winds, and the middle of v = 0.836 B^1.5, belong`,
        'WMO; G. C. Simpson, The Beaufort Scale of Wind-Force, Met Office no. 180, 1906',
        `${force}, ${force}, ${force}`,
        [metresPerSecond(from), metresPerSecond(to), middleOf(force)].map(forceOf).join(', '),
        '',
        { status: 'from memory' },
      ),
    ]
  },
)

const gradient =
  "an encyclopaedia's article on sailing, citing Deacon, Sheppard and Webb, Aust. J. Phys. 9, 1956"
const ams = "AMS Glossary, 'power-law profile'"
const wieringa = 'Davenport and Wieringa, as in R. Stull, Practical Meteorology, 18.5'
const garratt = 'J. R. Garratt, Monthly Weather Review 105, 1977, as a review abstract gives it'
const ten = metresPerSecond(10)
const within = (share: number) => ({ within: { share } })

const risen = (exponent: number) => (5 * windAt(ten, metres(15), exponent)) / windAt(ten, metres(3), exponent)

const heights: readonly PublishedRow[] = [
  row('5 m/s at 3 m, exponent 0.11: at 15 m', gradient, 5.97, risen(0.11), 'm/s', within(0.02)),
  row('5 m/s at 3 m, exponent 0.13: at 15 m', gradient, 6.16, risen(0.13), 'm/s', within(0.02)),
  ...(
    [
      [2, 8.38],
      [5, 9.27],
      [15, 10.46],
      [20, 10.79],
      [30, 11.28],
      [40, 11.65],
    ] as const
  ).map(([z, v]) =>
    row(
      `10 m/s at 10 m, at sea (0.11): at ${z} m`,
      gradient,
      v,
      windAt(ten, metres(z), seaExponent),
      'm/s',
      within(0.001),
    ),
  ),
  ...(
    [
      [2, 7.95],
      [5, 9.06],
      [20, 11.04],
      [30, 11.7],
      [40, 12.19],
    ] as const
  ).map(([z, v]) =>
    row(
      `10 m/s at 10 m, seventh root: at ${z} m`,
      ams,
      v,
      windAt(ten, metres(z), landExponent),
      'm/s',
      within(0.001),
    ),
  ),
  ...(
    [
      [2, 8.51],
      [5, 9.36],
      [20, 10.64],
      [30, 11.01],
      [40, 11.28],
    ] as const
  ).map(([z, v]) =>
    row(
      `10 m/s at 10 m, log law, roughness 0.0002 m: at ${z} m`,
      wieringa,
      v,
      windByLog(ten, metres(z)),
      'm/s',
      {
        ...within(0.001),
        status: 'from memory',
      },
    ),
  ),
  row('the same over roughness 0.001 m: at 30 m', wieringa, 11.19, windByLog(ten, metres(30), 0.001), 'm/s', {
    ...within(0.001),
    status: 'from memory',
  }),
  row('roughness of the sea under 10 m/s', garratt, 0.00021, roughnessUnder(ten), 'm', within(0.1)),
]

const iso = 'ISO 2533, standard atmosphere at sea level'
const pressures: readonly PublishedRow[] = [
  ...(
    [
      [5, 15.3],
      [10, 61.25],
      [15, 137.8],
      [20, 245],
    ] as const
  ).map(([v, q]) =>
    row(`wind of ${v} m/s: pressure`, iso, q, windPressure(metresPerSecond(v)), 'Pa', {
      within: { share: 0.001 },
      status: 'from memory',
    }),
  ),
  ...(
    [
      [10, 16.2, 0.339],
      [20, 64.8, 1.354],
      [30, 145.9, 3.05],
      [40, 259, 5.42],
    ] as const
  ).flatMap(([v, q, pounds]) => [
    row(`wind of ${v} knots: pressure`, iso, q, windPressure(kn(v)), 'Pa', {
      within: { share: 0.003 },
      status: 'from memory',
    }),
    row(`wind of ${v} knots: pressure in pounds`, iso, pounds, windPressure(kn(v)) / psf, 'lbf/ft2', {
      within: { share: 0.003 },
      status: 'from memory',
    }),
  ]),
  ...(
    [
      [5, 0.064],
      [10, 0.256],
    ] as const
  ).map(([v, pounds]) =>
    row(
      `wind of ${v} miles an hour: pressure`,
      'short-facts.com, wind force on a sail',
      pounds,
      windPressure(metresPerSecond(v * mph)) / psf,
      'lbf/ft2',
      {
        within: { share: 0.005 },
      },
    ),
  ),
  ...(
    [
      [20, 1],
      [100, 25.1],
    ] as const
  ).map(([v, pounds]) =>
    row(
      `wind of ${v} miles an hour, by the formula for ducts: pressure`,
      'catsailor.com, thread 63996',
      pounds,
      windPressure(metresPerSecond(v * mph)) / psf,
      'lbf/ft2',
      {
        within: { share: 0.025 },
      },
    ),
  ),
  row(
    '1 lb on the square foot: the wind that presses so',
    'unit load of 46 CFR 171.057 and 178.330',
    17,
    Math.sqrt(psf / windPressure(metresPerSecond(1))) / knot,
    'kn',
    {
      within: { amount: 0.5 },
    },
  ),
]

/** Compass bearing and speed of the true wind, from a ship's course and what is felt aboard. */
function trueBearing(course: number, speed: number, felt: number, off: number): readonly [number, number] {
  const wind = trueWind({ speed: kn(felt), angle: angle(off) }, kn(speed))
  return [wind.speed / knot, (course + wind.angle / degree + 720) % 360]
}

const licence = 'US deck-licence question, seatrials.net (answer worked here)'
const [firstSpeed, firstFrom] = trueBearing(180, 22, 20, -70)
const [secondSpeed, secondFrom] = trueBearing(270, 10, 30, -10)
const [boardSpeed, boardFrom] = trueBearing(240, 17.8, 30, 40)
const felt = (speed: number, off: number, ship: number) =>
  apparentWind({ speed: kn(speed), angle: angle(off) }, kn(ship))
const abeam = trueWind({ speed: kn(10), angle: angle(60) }, kn(5))
const half = { amount: 0.5 }
const one = { amount: 1 }

const triangles: readonly PublishedRow[] = [
  row(
    '5 kn ahead, 10 kn felt at 60 degrees: true wind',
    'sailboatowners.com, thread 51090',
    8.66,
    abeam.speed / knot,
    'kn',
    within(0.001),
  ),
  row(
    'the same: from abeam',
    'sailboatowners.com, thread 51090',
    90,
    abeam.angle / degree,
    'degrees',
    within(0.001),
  ),
  row('180 at 22 kn, 20 kn felt 70 degrees on the port bow: true wind', licence, 24.1, firstSpeed, 'kn', {
    within: half,
  }),
  row('the first of these: true wind from', licence, 51, firstFrom, 'degrees', { within: one }),
  row('270 at 10 kn, 30 kn felt 10 degrees on the port bow: true wind', licence, 20.2, secondSpeed, 'kn', {
    within: half,
  }),
  row('the second of these: true wind from', licence, 255, secondFrom, 'degrees', { within: one }),
  row(
    '240 at 17.8 kn, 30 kn felt at 040: true wind',
    'US Navy manoeuvring-board text (ship worked here)',
    20,
    boardSpeed,
    'kn',
    { within: half },
  ),
  row(
    'the same: true wind from',
    'US Navy manoeuvring-board text (ship worked here)',
    315,
    boardFrom,
    'degrees',
    { within: one },
  ),
  ...(
    [
      [20, 90, 6, 20.88, 73.3],
      [15, 70, 6, 17.96, 51.7],
      [20, 135, 8, 15.42, 113.5],
      [10, 180, 4, 6, 180],
    ] as const
  ).flatMap(([speed, off, ship, feltSpeed, feltAngle]) => [
    row(
      `true ${speed} kn at ${off} degrees, ship ${ship} kn: felt`,
      'plane trigonometry; sailnet.com 430632',
      feltSpeed,
      felt(speed, off, ship).speed / knot,
      'kn',
      within(0.001),
    ),
    row(
      `the same, true ${speed} kn at ${off} degrees: felt at`,
      'plane trigonometry; sailnet.com 430632',
      feltAngle,
      felt(speed, off, ship).angle / degree,
      'degrees',
      within(0.001),
    ),
  ]),
]

const dana = "R. H. Dana Jr, The Seaman's Friend, 5th ed., Boston 1847, ch. XI"
const practice = 'common practice, no source'
const course = { wind: { speed: kn(15), angle: angle(67.5) }, ship: kn(6) }
const aloft = (height: number, exponent?: number) =>
  windAloft(course, metres(height), exponent).angle / degree

const trims = [
  [49, 4, [36, 40, 44, 48, 52]],
  [63, 3.6, [36, 40, 43, 47, 50]],
  [73, 3.3, [41, 44, 47, 50, 54]],
  [95, 2.6, [51, 54, 57, 59, 62]],
  [120, 1.8, [64, 66, 68, 70, 71]],
  [148, 1, [78, 79, 80, 81, 82]],
  [180, 0, [90, 90, 90, 90, 90]],
] as const

/** How far the furthest yard of a fan stands from the printed one, which is in whole degrees. */
const furthest = (fan: readonly number[], printed: readonly number[]): number =>
  Math.max(...fan.map((yard, i) => Math.abs(yard / degree - (printed[i] ?? Number.NaN))))

const bracing: readonly PublishedRow[] = [
  ...(
    [
      ['topsail', 35.6],
      ['topgallant', 41.3],
      ['royal', 46.9],
    ] as const
  ).map(([sail, degrees], i) =>
    row(
      `lower yard at 30 degrees, each half a point more: ${sail} yard`,
      dana,
      degrees,
      (danasFan(angle(30), 4)[i + 1] ?? 0) / degree,
      'degrees',
      {
        within: { amount: 0.1 },
      },
    ),
  ),
  row(
    'smallest angle of a yard to the keel in general',
    "W. H. Smyth, Sailor's Word-Book, 1867, 'brace sharp'",
    20,
    sharpestEver / degree,
    'degrees',
    {
      kind: 'policy',
    },
  ),
  ...(
    [
      [6, 48.9],
      [12, 50],
      [18, 50.7],
      [24, 51.1],
      [30, 51.4],
      [36, 51.7],
    ] as const
  ).map(([z, degrees]) =>
    row(
      `true 15 kn at 6 points, ship 6 kn: felt at ${z} m`,
      'arithmetic on the wind by height and the triangle',
      degrees,
      aloft(z),
      'degrees',
      {
        within: { amount: 0.1 },
      },
    ),
  ),
  row(
    'the same: twist from 6 to 36 m',
    'arithmetic on the wind by height and the triangle',
    2.8,
    aloft(36) - aloft(6),
    'degrees',
    { within: { amount: 0.1 } },
  ),
  row(
    'the same by the seventh root',
    'arithmetic on the wind by height and the triangle',
    3.6,
    aloft(36, landExponent) - aloft(6, landExponent),
    'degrees',
    {
      within: { amount: 0.1 },
    },
  ),
  row(
    'a yard at 20 degrees in that wind: from yard to wind at 6 m',
    "Smyth, Sailor's Word-Book, and the same arithmetic",
    28.9,
    aloft(6) - sharpestEver / degree,
    'degrees',
    {
      within: { amount: 0.1 },
    },
  ),
  ...trims.flatMap(([wind, step, yards]) => [
    row(
      `felt at ${wind} degrees: each yard squarer by`,
      practice,
      step,
      fanStep(angle(wind)) / degree,
      'degrees',
      {
        status: 'common practice',
        within: { amount: 0.1 },
      },
    ),
    row(
      `felt at ${wind} degrees: five yards at ${yards.join(', ')} degrees; how far ours stand from them at the most`,
      practice,
      0,
      furthest(fanByRule(angle(wind), usualLimit, 5), yards),
      'degrees',
      { status: 'common practice', within: { amount: 0.6 } },
    ),
  ]),
]

export const winds: Topic = {
  title: 'Wind and bracing',
  rows: [...beaufortRows, ...heights, ...pressures, ...triangles, ...bracing],
  passedOver: [
    {
      fact: 'force 12: 32.7 m/s and up, 64 kn and up',
      source: scale,
      because: 'it has no upper limit; its lower one is that of the table',
    },
    {
      fact: 'grouping of forces in miles an hour, 1906',
      source: '1911 Encyclopaedia Britannica, Beaufort Scale',
      because: 'an older scale, up to 2 miles an hour off the present one',
    },
    {
      fact: 'force 5 is about 2 lb on the square foot of sail',
      source: 'M. Bigon, The Morrow Guide to Knots, p. 114',
      because: 'an order of magnitude, with a coefficient of sails in it',
    },
    {
      fact: 'pressure of 0.004 V^2 (miles an hour)',
      source: 'geogyan.in, Beaufort scale',
      because:
        "it holds a plate's drag of 1.56 already; ours is the bare pressure, and a coefficient is applied once",
    },
    {
      fact: 'square rig lies 6 points from the wind, fore-and-aft 4',
      source: "Nicholls's Seamanship and Nautical Knowledge, p. 69",
      because: 'a course is asked for, not judged',
    },
    {
      fact: 'upper yards a shade squarer is universal practice, though trials favour every yard as sharp as it will go',
      source: 'a seamanship manual, section XVI, p. 69 (work not identified)',
      because: 'both fans are shown; none is preferred',
    },
  ],
}
