import { type Figure, kilograms, metres, pascals, radians, squareMetres } from '../../../src/measure/index.ts'
import {
  catamaran,
  catamaranNumeral,
  curveOf,
  deckEdgeArm,
  equalAreaArm,
  heelingMoment,
  heelUnder,
  leastMetacentricHeight,
  leastRange,
  numeral,
  numeralOf,
  numerals,
  proofMoment,
  type Waters,
} from '../../../src/reckon/stability/index.ts'
import { type PublishedRow, row, type Topic } from './row.ts'

const degree = Math.PI / 180
const foot = 0.3048
const pound = 0.45359237
const ton = 2240 * pound

const known = (figure: Figure<number>): number => (figure.known ? figure.value : Number.NaN)
const memory = { status: 'from memory' } as const

const cfr = (section: string) => `46 CFR ${section}`
const sailing = cfr('171.055(d)')

const printed: readonly PublishedRow[] = (
  [
    ['exposed', '1.5, 1.7, 1.9', 90],
    ['partially protected', '1, 1.1, 1.25', 70],
    ['protected', '1, 1.1, 1.25', 70],
  ] as const
).flatMap(([waters, xyz, range]) => [
  row(`${waters} waters: X, Y and Z`, sailing, xyz, constants(waters), 'long tons/ft2', { kind: 'tabled' }),
  row(`${waters} waters: righting arm positive to`, cfr('171.055(c)'), range, leastRange[waters], 'degrees', {
    kind: 'policy',
  }),
])

function constants(waters: Waters): string {
  const { x, y, z } = numerals[waters]
  return [x, y, z].join(', ')
}

const metric: readonly PublishedRow[] = (
  [
    ['X protected', 1, 10.9],
    ['Y protected', 1.1, 12],
    ['Z protected', 1.25, 13.7],
    ['X exposed', 1.5, 16.4],
    ['Y exposed', 1.7, 18.6],
    ['Z exposed', 1.9, 20.8],
  ] as const
).map(([name, tons, published]) =>
  row(`${name}, ${tons} long tons/ft2: in metric tons`, sailing, published, tons * numeral, 't/m2', {
    within: { share: 0.005 },
  }),
)

const vessel = {
  displacement: kilograms(150 * ton),
  area: squareMetres(4000 * foot ** 2),
  arm: metres(40 * foot),
}

const curve = (...points: readonly (readonly [number, number])[]) =>
  curveOf(points.map(([angle, feet]) => ({ angle: radians(angle * degree), arm: metres(feet * foot) })))

const arms: readonly PublishedRow[] = [
  ...(
    [
      [1.8, 1.688],
      [2.2, 2.063],
      [2.4, 2.25],
    ] as const
  ).map(([feet, published]) =>
    row(
      `150 long tons, 4,000 ft2, 40 ft, heeling arm ${feet} ft: numeral`,
      `${sailing} (equation)`,
      published,
      numeralOf(vessel, metres(feet * foot)),
      'long tons/ft2',
      {
        ...memory,
        within: { amount: 0.001 },
      },
    ),
  ),
  row(
    'righting arm 1.60 ft where the deck edge goes under, at 20 degrees: heeling arm upright',
    `${cfr('171.055(e)')} (equation)`,
    1.812,
    known(deckEdgeArm(curve([20, 1.6], [60, 2]), radians(20 * degree))) / foot,
    'ft',
    {
      ...memory,
      within: { amount: 0.001 },
    },
  ),
  row(
    '80 ft-degrees of righting arm to 60 degrees: heeling arm upright',
    `${cfr('171.055(f)')} (equation)`,
    1.887,
    known(equalAreaArm(curve([60, 160 / 60]), radians(60 * degree))) / foot,
    'ft',
    {
      ...memory,
      within: { share: 0.001 },
    },
  ),
  row(
    'to 90 degrees, each ft of heeling arm upright: its area',
    `${cfr('171.055(f)')} (equation)`,
    45,
    90 / 2 / (known(equalAreaArm(curve([90, 1]), radians(90 * degree))) / foot),
    'ft-degrees',
    {
      ...memory,
      within: { share: 0.001 },
    },
  ),
]

const bare = (waters: Waters) =>
  leastMetacentricHeight({
    length: metres(100 * foot),
    area: squareMetres(1500 * foot ** 2),
    arm: metres(18 * foot),
    displacement: kilograms(150 * ton),
    deckEdge: radians(25 * degree),
    waters,
  }) / foot

const weather: readonly PublishedRow[] = (
  [
    ['exposed', 3.65],
    ['partially protected', 2.42],
    ['protected', 1.84],
  ] as const
).map(([waters, published]) =>
  row(
    `100 ft, 1,500 ft2 of hull and spars, 18 ft, 150 long tons, ${waters} waters: least metacentric height`,
    cfr('170.170(a)'),
    published,
    bare(waters),
    'ft',
    {
      within: { amount: 0.01 },
    },
  ),
)

const others: readonly PublishedRow[] = [
  row(
    'sailing catamaran: numeral asked in protected, partially protected and exposed waters',
    cfr('171.057'),
    '1, 1.5, 1.5',
    (['protected', 'partially protected', 'exposed'] as const)
      .map(waters => catamaranNumeral[waters])
      .join(', '),
    'lbf/ft2',
    {
      kind: 'policy',
    },
  ),
  row(
    'sailing catamaran, 20,000 lb, 16 ft, 700 ft2, 22 ft: numeral',
    `${cfr('171.057')} (equation)`,
    2.08,
    catamaran(kilograms(20_000 * pound), metres(16 * foot), squareMetres(700 * foot ** 2), metres(22 * foot)),
    'lbf/ft2',
    {
      ...memory,
      within: { amount: 0.01 },
    },
  ),
  row(
    'small vessel, 1,200 ft2 of sail, 30 ft: heeling moment of the proof test',
    cfr('178.330'),
    36_000,
    proofMoment(squareMetres(1200 * foot ** 2), metres(30 * foot)) / (pound * 9.80665 * foot),
    'ft lb',
    {
      within: { share: 1e-5 },
    },
  ),
]

const ship = {
  pressure: pascals(47.88),
  area: squareMetres(400),
  arm: metres(12),
  displacement: kilograms(200_000),
  metacentricHeight: metres(0.9),
}

const heel: readonly PublishedRow[] = [
  row(
    '400 m2, 1 lb/ft2, arm 12 m: heeling moment',
    "small-angle stability; Dellenbaugh's angle in Skene",
    229.8,
    heelingMoment(ship) / 1000,
    'kN m',
    {
      ...memory,
      within: { share: 0.001 },
    },
  ),
  row(
    'the same, 200 t, metacentric height 0.90 m: heel, the wind spilled as she heels',
    "small-angle stability; Dellenbaugh's angle in Skene",
    7.36,
    heelUnder(ship) / degree,
    'degrees',
    {
      ...memory,
      within: { amount: 0.02 },
    },
  ),
  row(
    'moment of sail: its area times the height of its centre over that of lateral resistance',
    "dictionary.com, 'moment of sail'",
    4800,
    heelingMoment({ ...ship, pressure: pascals(1) }),
    'm3',
  ),
]

export const stability: Topic = {
  title: 'Stability of sailing vessels, and heel',
  rows: [...printed, ...metric, ...arms, ...weather, ...others, ...heel],
  passedOver: [
    {
      fact: 'the righting-arm curve is cut short where its maximum lies below 35 degrees',
      source: cfr('171.055(e)'),
      because: 'how it is cut was not read: the criteria are then left unknown',
    },
    {
      fact: 'area A with all sail set and trimmed flat, overlaps once; H from its centre to that of the underwater area',
      source: sailing,
      because: 'a definition of what is given to the method, not a figure',
    },
    {
      fact: 'metric constants of the wind pressure, 0.055, 0.036, 0.028 + (L/1309)^2 t/m2',
      source: cfr('170.170(a)'),
      because: 'the same rule in rounded units, a hundredth apart; the foot and long ton are used',
    },
    {
      fact: 'passenger moment and cockpit freeboard of the proof test',
      source: cfr('178.330'),
      because: "passengers are no matter of the rig; which form goes with which waters wasn't read",
    },
    {
      fact: 'sail area to displacement, 11.89 for 400 m2 and 200 t',
      source: 'the standard ratio of yachts (from memory)',
      because: 'a ratio to compare yachts by; no use is made of it',
    },
    {
      fact: 'heel under passengers crowding to one side',
      source: `${cfr('171.050')} (from memory)`,
      because: 'not read, and no matter of the rig',
    },
  ],
}
