import { type Figure, metres } from '../../../src/measure/index.ts'
import { canvasWeight } from '../../../src/reckon/sails/index.ts'
import {
  densityOf,
  lengthsBy,
  mastsBySevenths,
  proportions,
  taperedVolume,
  thicknessBy,
} from '../../../src/reckon/spars/index.ts'
import { exact, type PublishedRow, type Topic } from './row.ts'

const foot = 0.3048
const dana = "R. H. Dana Jr, The Seaman's Friend, 5th ed., Boston 1847, ch. I"
const hedderwick = 'P. Hedderwick, Treatise on Marine Architecture, 1830, pp. 352 and 357'
const steel = 'D. Steel, Elements of Mastmaking, 1794, p. 39'
const vadeMecum = "The Sea-Man's Vade Mecum, 1707, p. 131"
const encyclopaedia = 'Edinburgh Encyclopaedia, construction of ships'

const ruleOf = (name: string) => {
  const rule = proportions.find(one => one.name === name)
  if (!rule) throw new Error(`no rule "${name}"`)
  return rule
}
/** Length of a spar in feet, of a vessel said in feet. */
const feet = (rule: string, spar: string, beam: number, length = 0): number =>
  (lengthsBy(ruleOf(rule), { beam: metres(beam * foot), length: metres(length * foot) }).get(spar) ??
    Number.NaN) / foot
/** Thickness of a spar in inches by its length in feet. */
const inches = (rule: string, spar: string, length: number): number =>
  (thicknessBy(ruleOf(rule), spar, metres(length * foot)) ?? Number.NaN) / 0.0254

const row = (
  fact: string,
  source: string,
  published: number,
  computed: number,
  within: PublishedRow['within'] = { amount: 0.1 },
  unit = 'ft',
): PublishedRow => ({ fact, source, status: 'read', kind: 'computed', published, computed, unit, within })

const merchantman = 'merchantman, 1847'
const ofDana: readonly PublishedRow[] = [
  ...(
    [
      ['main mast', 81.25],
      ['fore mast', 72.2],
      ['mizzen mast', 67.7],
      ['bowsprit', 54.2],
      ['jib-boom', 54.2],
      ['main topmast', 48.75],
      ['main topgallant mast', 24.4],
      ['main yard', 65],
      ['fore yard', 56.9],
      ['main topsail yard', 43.3],
      ['main topgallant yard', 28.9],
      ['main royal yard', 19.3],
      ['crossjack yard', 43.3],
      ['mizzen topsail yard', 28.9],
      ['spanker boom', 43.3],
      ['spanker gaff', 28.9],
    ] as const
  ).map(([spar, published]) =>
    row(`${spar}, beam 32 1/2 ft`, dana, published, feet(merchantman, spar, 32.5)),
  ),
  ...(
    [
      ['main mast', 74, 10],
      ['main topmast', 41, 19],
      ['main yard', 60, 8],
      ['main topsail yard', 48, -10],
      ['main topgallant yard', 37, -22],
      ['main royal yard', 27, -29],
    ] as const
  ).map(([spar, measured, published]) =>
    row(
      `${spar} of a merchantman of 1839, ${measured} ft: the rule is off by`,
      dana,
      published,
      (feet(merchantman, spar, 32.5) / measured - 1) * 100,
      { amount: 0.6 },
      '%',
    ),
  ),
  row('mast of 81 1/4 ft: thickness', dana, 33.9, inches(merchantman, 'main mast', 81.25), undefined, 'in'),
  row('yard of 65 ft: thickness', dana, 16.25, inches(merchantman, 'main yard', 65), exact, 'in'),
  row(
    'mast of 74 ft, printed 26 in thick: by the rule',
    dana,
    26,
    inches(merchantman, 'main mast', 74),
    { share: 0.25 },
    'in',
  ),
  ...[0, 1, 2].map(i =>
    row(
      `place of the ${['fore', 'main', 'mizzen'][i]} mast by sevenths, length 140 ft`,
      dana,
      [20, 80, 120][i] ?? Number.NaN,
      (mastsBySevenths(metres(140 * foot))[i] ?? Number.NaN) / foot,
      exact,
    ),
  ),
]

const waterline = 115.25
const ofHedderwick = (spar: string) => feet('merchantman, 1830', spar, 31, waterline)
const second = { ofMast: 75 }
const others: readonly PublishedRow[] = [
  row('main mast, beam 31 ft, waterline 115 ft 3 in', hedderwick, 75.1, ofHedderwick('main mast')),
  row(
    'masthead of a mast of 75 ft',
    hedderwick,
    10.5,
    (ofHedderwick('main masthead') / ofHedderwick('main mast')) * second.ofMast,
    exact,
  ),
  row(
    'mast of 75 ft: thickness',
    hedderwick,
    22.5,
    inches('merchantman, 1830', 'main mast', 75),
    exact,
    'in',
  ),
  row(
    'main topmast of a mast of 75 ft (42 ft 10 in)',
    hedderwick,
    42 + 10 / 12,
    (ofHedderwick('main topmast') / ofHedderwick('main mast')) * second.ofMast,
  ),
  row(
    'topmast of 42 ft 10 in: thickness of the heel',
    hedderwick,
    14.25,
    inches('merchantman, 1830', 'main topmast', 42 + 10 / 12),
    undefined,
    'in',
  ),
  row(
    'topgallant mast of a topmast of 42 ft 10 in (printed 3 in short, 23 ft 6 1/2 in)',
    hedderwick,
    23.8,
    (ofHedderwick('main topgallant mast') / ofHedderwick('main topmast')) * (42 + 10 / 12),
  ),
  row(
    'royal mast of a topgallant mast of 23 1/2 ft',
    hedderwick,
    13.5,
    (ofHedderwick('main royal mast') / ofHedderwick('main topgallant mast')) * 23.5,
  ),
  row(
    'pole of a royal mast of 13 1/2 ft (8 ft 1 in)',
    hedderwick,
    8 + 1 / 12,
    (ofHedderwick('main pole') / ofHedderwick('main royal mast')) * 13.5,
  ),
  row(
    'fore mast of a main mast of 75 ft',
    hedderwick,
    70,
    (ofHedderwick('fore mast') / ofHedderwick('main mast')) * 75,
    exact,
  ),
  ...(
    [
      ['main mast', 72, 0.5],
      ['fore mast', 64, 8 / 9],
      ['mizzen mast', 61.714, 6 / 7],
      ['main topmast', 43.2, 0],
      ['main topgallant mast', 21.6, 0],
      ['main yard', 64, 0],
      ['fore yard', 56, 0],
      ['main topsail yard', 45.714, 0],
      ['main topgallant yard', 27.429, 0],
    ] as const
  ).map(
    ([spar, published]): PublishedRow => ({
      ...row(
        `${spar}, lower deck 110 ft, breadth 34 ft`,
        steel,
        published,
        feet('navy, 1794', spar, 34, 110),
        {
          amount: 0.001,
        },
      ),
      status: 'second-hand',
    }),
  ),
  row('small ship of 20 ft beam: main mast', vadeMecum, 60, feet('small ship, 1707', 'main mast', 20), exact),
  row('main yard of a mast of 60 ft', vadeMecum, 45, feet('small ship, 1707', 'main yard', 20), exact),
  row(
    'fore yard of a main yard of 45 ft',
    vadeMecum,
    38 + 4 / 7,
    feet('small ship, 1707', 'fore yard', 20),
    exact,
  ),
  row(
    'large ship, 114 ft by 34 ft: main mast (33 yards; the column is printed 168 for 165)',
    vadeMecum,
    99,
    feet('large ship, 1707', 'main mast', 34, 114),
    exact,
  ),
  row(
    'ship of 29 ft beam: main mast',
    'J. Smith, A Sea Grammar, 1627, ch. III',
    72,
    feet('ship of 1627', 'main mast', 29),
    exact,
  ),
  row(
    'mast of 72 ft: thickness',
    'J. Smith, A Sea Grammar, 1627, ch. III',
    24,
    inches('ship of 1627', 'main mast', 72),
    exact,
    'in',
  ),
  row(
    'bark of 100 ft: main yard',
    encyclopaedia,
    60,
    feet('bark, early 19th century', 'main yard', 25, 100),
    exact,
  ),
  row(
    'bark of 100 ft: main topsail yard',
    encyclopaedia,
    48.6,
    feet('bark, early 19th century', 'main topsail yard', 25, 100),
    exact,
  ),
]

export const spars: Topic = {
  title: 'Spars and masts',
  rows: [...ofDana, ...others],
  passedOver: [
    {
      fact: 'Sharp ship: fore mast further aft, mizzen further forward',
      source: dana,
      because: 'says which way, not how far',
    },
    {
      fact: 'Main mast as half of (length / 3 + 3 breadths + housing): 75 ft',
      source: hedderwick,
      because: 'needs the housing below deck, which the text of a rig has no word for',
    },
    {
      fact: '7/8 of the thickness at the trestletrees, 2/3 at the top; 2/7 in a foot for Riga fir',
      source: hedderwick,
      because: 'the model of a mast has one thickness for each section',
    },
    {
      fact: 'An older rule of one inch of thickness for three feet of mast',
      source: dana,
      because: 'printed beside the other to show that both miss the ship as built; one is kept',
    },
    {
      fact: 'Frigates: main yard 0.52 of the length, main topsail yard 0.79 of it',
      source: encyclopaedia,
      because: 'the rule for barks is kept',
    },
  ],
}

const value = <Q>(figure: Figure<Q>): Q => {
  if (!figure.known) throw new Error(figure.because)
  return figure.value
}
const grams = (canvas: string, number: number) => value(canvasWeight(canvas, number)) * 1000

const cloth = (
  canvas: string,
  source: string,
  status: PublishedRow['status'],
  within: number,
  rows: readonly (readonly [number, number])[],
): readonly PublishedRow[] =>
  rows.map(([number, published]) => ({
    fact: `${canvas}, number ${number}`,
    source,
    status,
    kind: 'tabled',
    published,
    computed: grams(canvas, number),
    unit: 'g/m²',
    within: { share: within },
  }))

const timber = (
  name: string,
  published: number,
  source: string,
  status: PublishedRow['status'],
  share: number,
): PublishedRow => ({
  fact: `density of ${name}`,
  source,
  status,
  kind: 'tabled',
  published,
  computed: value(densityOf(name)),
  unit: 'kg/m³',
  within: { share },
})

const handbook = 'USDA Wood Handbook, FPL-GTR-190, ch. 5'
const nicholls = "Nicholls's Seamanship and Nautical Knowledge, p. 346"

export const weights: Topic = {
  title: 'Weights of timber and canvas',
  rows: [
    {
      fact: 'A cone of 3 m by 0.4 m at the foot, by three sections: volume',
      source: 'mensuration',
      status: 'from memory',
      kind: 'computed',
      published: (Math.PI * 0.2 ** 2 * 3) / 3,
      computed: taperedVolume(3, Math.PI * 0.2 ** 2, Math.PI * 0.1 ** 2, 0),
      unit: 'm³',
      within: { share: 0.02 },
    },
    timber('sitka spruce', 448, handbook, 'from memory', 0.05),
    timber('douglas fir', 538, handbook, 'from memory', 0.05),
    timber('white pine', 392, handbook, 'from memory', 0.05),
    timber('red pine', 515, handbook, 'from memory', 0.05),
    timber('longleaf pine', 661, handbook, 'from memory', 0.05),
    timber('white oak', 762, handbook, 'from memory', 0.05),
    timber('pitch pine', 641, nicholls, 'read', 0.1),
    timber('elm', 721, nicholls, 'read', 0.1),
    timber('teak', 801, nicholls, 'read', 0.1),
    ...cloth('cotton duck', 'Seaman, NAVEDTRA 14067', 'read', 0.01, [
      [1, 973],
      [6, 703],
      [12, 378],
    ]),
    // A number that is not printed, against the straight line through the three that are.
    ...cloth('cotton duck', 'Seaman, NAVEDTRA 14067, between two numbers', 'read', 0.01, [[3, 865]]),
    ...cloth('navy flax', "Knight's Cyclopaedia of the Industry of All Nations, Sails", 'read', 0.02, [
      [1, 942],
    ]),
    ...cloth('merchant flax', "Nicholls's Seamanship and Nautical Knowledge, p. 63", 'read', 0.02, [
      [1, 940],
    ]),
    ...cloth('American flax', 'D. Lever, Sheet Anchor, American ed. 1863', 'read', 0.02, [
      [1, 1160],
      [2, 1038],
      [3, 854],
      [4, 793],
      [5, 732],
      [6, 610],
      [7, 537],
      [8, 488],
    ]),
    ...cloth(
      'navy flax',
      'D. Steel, Sailmaking, 1794; R. Kipping, Sails and Sailmaking',
      'from memory',
      0.02,
      [
        [1, 942],
        [2, 878],
        [3, 814],
        [4, 749],
        [5, 685],
        [6, 621],
        [7, 514],
        [8, 450],
      ],
    ),
  ],
  passedOver: [
    {
      fact: 'Steel, 489 lb a cubic foot',
      source: nicholls,
      because: 'taken as printed: nothing to compare it with',
    },
    {
      fact: 'Numbers 1 to 3 for courses, topsails and storm sails, lighter for the rest',
      source: "New International Encyclopaedia, Canvas; Smyth, The Sailor's Word-Book, 1867",
      because: 'words, not figures: the test of sails holds that every class keeps to it',
    },
    {
      fact: 'Running yards of canvas in a suit of sails: frigate 14,603, schooner 3,102',
      source: 'D. Lever, Sheet Anchor, American ed. 1863',
      because: 'the vessels are not given, only their classes',
    },
  ],
}
