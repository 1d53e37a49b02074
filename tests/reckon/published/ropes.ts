import { type Figure, type Metres, metres, newtons } from '../../../src/measure/index.ts'
import { leastSafety } from '../../../src/reckon/load/index.ts'
import {
  byRule,
  ropeWeight,
  rulesOfThumb,
  shareLeft,
  strengthOf,
  thicknessFor,
} from '../../../src/reckon/rope/index.ts'
import { exact, type PublishedRow, type Topic } from './row.ts'

const poundForce = 4.4482216152605
const longTon = 2240 * poundForce
const inch = 0.0254
const g = 9.80665
const jutsum = 'Capt. J. N. Jutsum, Knots, Bends, Splices, Glasgow 1914, p. 85'
const tradeTable = 'cordage trade, table of minimum tensile strength, three-strand'
const metricTable = 'Manila Ropes - Strength, a general engineering table'
const nicholls = "Nicholls's Seamanship and Nautical Knowledge, p. 346"
const dyer = 'A. B. Dyer, Handbook for Light Artillery, Cordage'
const examiners = 'US licence examination rule, as taught in a marlinespike lesson'

const value = <Q>(figure: Figure<Q>): Q => {
  if (!figure.known) throw new Error(figure.because)
  return figure.value
}
/** Diameter of a rope by its circumference in inches, as read from a text in millimetres: to a tenth. */
const roundInches = (circumference: number): Metres =>
  metres(Number((((circumference * inch) / Math.PI) * 1000).toFixed(1)) / 1000)
const kilonewtons = (material: string, diameter: Metres) =>
  value(strengthOf(material, diameter)).breaking / 1000

interface Printed {
  readonly material: string
  readonly source: string
  readonly within: number
}

/** A printed load in kN at a size in whole millimetres and tenths: what a text would say of that rope. */
const tabled = (
  size: string,
  diameter: Metres,
  published: number,
  { material, source, within }: Printed,
): PublishedRow => ({
  fact: `${material}, ${size}: breaking load`,
  source,
  status: 'read',
  kind: 'tabled',
  published,
  computed: kilonewtons(material, diameter),
  unit: 'kN',
  within: { share: within },
})

const byCircumference = (printed: Printed, rows: readonly (readonly [number, number])[]) =>
  rows.map(([size, kN]) => tabled(`${size} in round`, roundInches(size), kN, printed))
const byInches = (printed: Printed, rows: readonly (readonly [string, number, number])[]) =>
  rows.map(([size, inches, kN]) => tabled(`${size} in thick`, metres(inches * inch), kN, printed))
const byMillimetres = (printed: Printed, rows: readonly (readonly [number, number])[]) =>
  rows.map(([size, kN]) => tabled(`${size} mm`, metres(size / 1000), kN, printed))

const tables: readonly PublishedRow[] = [
  ...byCircumference({ material: 'manila', source: jutsum, within: 0.02 }, [
    [2, 13.0],
    [3, 28.9],
    [4, 51.3],
    [5, 80.7],
    [6, 116.1],
  ]),
  ...byCircumference({ material: 'tarred hemp', source: jutsum, within: 0.02 }, [
    [2, 9.5],
    [3, 20.9],
    [4, 38.4],
    [6, 84.2],
  ]),
  ...byCircumference({ material: 'coir', source: jutsum, within: 0.03 }, [
    [2, (6 / 20) * (longTon / 1000)],
    [3, (14 / 20) * (longTon / 1000)],
    [4, 1.25 * (longTon / 1000)],
    [6, 2.9 * (longTon / 1000)],
    [8, 5 * (longTon / 1000)],
  ]),
  ...byCircumference({ material: 'flexible wire', source: jutsum, within: 0.02 }, [
    [1, 17.4],
    [1.5, 39.9],
    [2, 69.7],
    [3, 179],
    [4, 329],
  ]),
  ...byCircumference({ material: 'galvanised wire', source: jutsum, within: 0.02 }, [
    [2, 69.7],
    [3, 159.4],
    [4, 298.9],
  ]),
  ...byCircumference({ material: 'extra flexible wire', source: jutsum, within: 0.02 }, [
    [2, 109.6],
    [3, 254.1],
    [4, 438.4],
  ]),
  ...byInches({ material: 'modern manila', source: tradeTable, within: 0.02 }, [
    ['1/2', 1 / 2, 10.6],
    ['3/4', 3 / 4, 21.6],
    ['7/8', 7 / 8, 30.9],
    ['1 1/8', 9 / 8, 48.0],
    ['1 1/2', 3 / 2, 74.3],
    ['2', 2, 124.6],
  ]),
  ...byMillimetres({ material: 'modern manila', source: metricTable, within: 0.03 }, [
    [10, 5.4],
    [12, 10.6],
    [16, 17.6],
    [20, 26.0],
    [24, 36.0],
    [28, 48.0],
    [36, 74.1],
    [48, 120],
  ]),
  ...byInches({ material: 'nylon', source: tradeTable, within: 0.02 }, [
    ['1/2', 1 / 2, 25.6],
    ['3/4', 3 / 4, 56.9],
    ['1 1/2', 3 / 2, 213],
    ['2', 2, 369],
  ]),
  ...byInches({ material: 'polypropylene', source: tradeTable, within: 0.02 }, [
    ['1/2', 1 / 2, 16.8],
    ['3/4', 3 / 4, 34.0],
    ['1 1/2', 3 / 2, 119],
    ['2', 2, 208],
  ]),
]

/** Sizes that no table prints, against the law fitted to that table. */
const between: readonly PublishedRow[] = (
  [
    ['manila', 723, 2.5, 0.05],
    ['manila', 723, 3.5, 0.05],
    ['manila', 723, 7, 0.05],
    ['tarred hemp', 525, 2.5, 0.08],
    ['tarred hemp', 525, 5, 0.08],
  ] as const
).map(([material, fitted, size, within]) => ({
  fact: `${material}, ${size} in round, between two sizes of the table: against ${fitted} C² lb`,
  source: jutsum,
  status: 'read',
  kind: 'tabled',
  published: (fitted * size ** 2 * poundForce) / 1000,
  computed: kilonewtons(material, roundInches(size)),
  unit: 'kN',
  within: { share: within },
}))

const law = (name: string, size: number): number => {
  const rule = rulesOfThumb.find(one => one.name.startsWith(name))
  if (!rule) throw new Error(`no rule "${name}"`)
  return byRule(rule, metres((size * inch) / Math.PI)) / poundForce
}
const thumb = (
  fact: string,
  source: string,
  published: number,
  computed: number,
  within: PublishedRow['within'] = { share: 1e-6 },
): PublishedRow => ({
  fact,
  source,
  status: 'read',
  kind: 'computed',
  published,
  computed,
  unit: 'lb',
  within,
})

const rules: readonly PublishedRow[] = [
  thumb('900 C² for manila, 1/2 in thick', examiners, 2218, law('manila, 900', 1.57), { share: 0.0005 }),
  thumb('the same for nylon, two and a half times', examiners, 5546, law('nylon', 1.57), { share: 0.0005 }),
  thumb('810 C² for three-strand manila, 3 in round', dyer, 7290, law('manila, three-strand', 3)),
  thumb('1140 C² for white hemp, 3 in round', dyer, 10260, law('white hemp', 3)),
  thumb('850 C² for tarred hemp, 3 in round', dyer, 7650, law('tarred hemp', 3)),
  thumb('C²/4 short tons, 4 in round', `${dyer}, p. 315`, 8000, law('any rope, C²/4', 4)),
  ...(
    [
      [1, 540],
      [2, 2160],
      [3, 4860],
      [4, 8640],
    ] as const
  ).map(([size, pounds]) =>
    thumb(`manila in use, ${size} in round`, `${dyer}, p. 315`, pounds, law('manila in use', size)),
  ),
  thumb(
    'C²/5 long tons, 3 in round',
    "F. A. Griffiths, The Artillerist's Manual, Cordage",
    1.8 * 2240,
    law('any rope, C²/5', 3),
  ),
  thumb('iron wire, C² long tons, 2 in round', `${dyer}, p. 315`, 4 * 2240, law('iron wire', 2)),
  ...[2, 3, 4, 5, 6].map(size =>
    thumb(
      `C²/3 long tons for manila, ${size} in round, beside the table of 1914`,
      nicholls,
      law('manila, C²/3', size),
      kilonewtons('manila', roundInches(size)) * (1000 / poundForce),
      { share: 0.05 },
    ),
  ),
  ...(
    [
      [1.5, 4.5],
      [2, 8],
      [3, 18],
      [4, 32],
    ] as const
  ).map(([size, tons]) => ({
    ...thumb(
      `2 C² long tons for wire, ${size} in round, beside the table of flexible wire`,
      jutsum,
      tons,
      kilonewtons('flexible wire', roundInches(size)) / (longTon / 1000),
      { share: 0.15 },
    ),
    unit: 'tons',
  })),
]

const sized: readonly PublishedRow[] = [
  {
    fact: 'manila for a working load of 0.943 t at a quarter of the breaking load: least thickness',
    source: 'Wells Construction, Peace Corps 1980, App. IX, from US Army FM 5-34, 1969',
    status: 'read',
    kind: 'computed',
    published: 25.4,
    computed: value(thicknessFor('modern manila', newtons(4 * 943 * g))) * 1000,
    unit: 'mm',
    within: { share: 0.08 },
  },
  {
    fact: 'manila of 10 mm at a twelfth of the breaking load: mass held',
    source: metricTable,
    status: 'read',
    kind: 'computed',
    published: 45.9,
    computed: (kilonewtons('modern manila', metres(0.01)) * 1000) / 12 / g,
    unit: 'kg',
    within: { share: 0.005 },
  },
  {
    fact: 'manila of 20 mm for the side ropes of a pilot ladder, which must bear 24 kN',
    source: 'a comparison of manila and sisal, quoting ISO 799:2019',
    status: 'second-hand',
    kind: 'tabled',
    published: 26,
    computed: kilonewtons('modern manila', metres(0.02)),
    unit: 'kN',
    within: { share: 0.02 },
  },
]

const leastOf = (fn: 'hoists' | 'extends') =>
  leastSafety({ function: fn } as Parameters<typeof leastSafety>[0])

const factors: readonly PublishedRow[] = [
  {
    fact: 'Working load a sixth of the breaking load: the least factor of what hoists',
    source: nicholls,
    status: 'read',
    kind: 'policy',
    published: 6,
    computed: leastOf('hoists'),
    unit: '',
    within: exact,
  },
  {
    fact: 'A fifth of the breaking load is a fair load for wire: the least factor of sheets and braces',
    source: 'Capt. J. N. Jutsum, Knots, Bends, Splices, Glasgow 1914, p. 74',
    status: 'read',
    kind: 'policy',
    published: 5,
    computed: leastOf('extends'),
    unit: '',
    within: exact,
  },
  {
    fact: 'Manila for a pull of 3 tons at a seventh of C² tons: circumference (4.58, printed 4.5)',
    source: "Nicholls's Seamanship and Nautical Knowledge, p. 42",
    status: 'read',
    kind: 'computed',
    published: 4.58,
    // C² / 7 tons is three sevenths of the breaking load by the rule of C² / 3.
    computed: Math.sqrt(((7 / 3) * 3 * 2240) / law('manila, C²/3', 1)),
    unit: 'in',
    within: { amount: 0.01 },
  },
  {
    fact: 'Wire for a pull of 8 tons at a third of 2 C² tons: circumference',
    source: "Nicholls's Seamanship and Nautical Knowledge, p. 44",
    status: 'read',
    kind: 'computed',
    published: 3.5,
    computed: Math.sqrt((3 * 8 * 2240) / law('wire of 12', 1)),
    unit: 'in',
    within: { share: 0.02 },
  },
]

const lbFathom = (material: string, size: number) =>
  (value(ropeWeight(material, metres((size * inch) / Math.PI))) * 1.8288) / 0.45359237

const weights: readonly PublishedRow[] = (
  [
    ['manila, 3 in round: 120 fathoms', jutsum, 198, 120 * lbFathom('manila', 3), 0.03],
    ['manila, 2 in round: 120 fathoms', jutsum, 88, 120 * lbFathom('manila', 2), 0.03],
    ['tarred hemp, 3 in round: 120 fathoms', jutsum, 246, 120 * lbFathom('tarred hemp', 3), 0.03],
  ] as const
).map(([fact, source, published, computed, share]) => ({
  fact,
  source,
  status: 'read',
  kind: 'computed',
  published,
  computed,
  unit: 'lb',
  within: { share },
}))

const wear: readonly PublishedRow[] = [
  {
    fact: 'A knot leaves half of the strength',
    source: 'lessons on cordage (knots take 50 to 60 %)',
    status: 'read',
    kind: 'policy',
    published: 0.5,
    computed: shareLeft({ end: 'knotted', age: 'new' }),
    unit: '',
    within: exact,
  },
  {
    fact: 'A figure-eight takes 35 %',
    source: 'lessons on cordage',
    status: 'read',
    kind: 'policy',
    published: 0.65,
    computed: shareLeft({ end: 'figure-eight', age: 'new' }),
    unit: '',
    within: exact,
  },
  {
    fact: 'Rope in daily use: a third off',
    source: dyer,
    status: 'read',
    kind: 'policy',
    published: 2 / 3,
    computed: shareLeft({ end: 'spliced', age: 'in daily use' }) / shareLeft({ end: 'spliced', age: 'new' }),
    unit: '',
    within: exact,
  },
]

export const ropes: Topic = {
  title: 'Rope: strength, size and weight',
  rows: [...tables, ...between, ...rules, ...sized, ...factors, ...weights, ...wear],
  passedOver: [
    {
      fact: 'One tenth where people are raised; one third for special derrick wire',
      source: 'Jutsum 1914, p. 74; Nicholls, p. 44',
      because: 'no line of a rig raises people, and none is a derrick',
    },
    {
      fact: 'Factors of 5 to 12 for fibre rope',
      source: 'Cordage Institute, from memory',
      because: 'a range about the least factors that are used',
    },
    {
      fact: 'Field rule for manila above 6 in round, and for four-strand',
      source: dyer,
      because: 'no line of a rig is that large; a rule of thumb shown beside the tables is enough',
    },
    {
      fact: 'Chain: 30 D² tons breaking, 12 D² proof, 6 D² safe',
      source: nicholls,
      because: 'the text gives the thickness of rope, not of chain',
    },
    {
      fact: 'ISO 1140, 1141, 1181, 1346: breaking loads',
      source: 'ISO (from memory)',
      because: 'no table was read, and none is invented',
    },
    {
      fact: 'Sling table for manila, with a factor of 4.5, and its two-leg bridle',
      source: '29 CFR 1915.118 Table G-1',
      because: 'slings of a shipyard are no part of a rig',
    },
    {
      fact: 'A jerk may reach three to four times the steady load',
      source: `${jutsum}, p. 73`,
      because: 'advice: it is why the least factors are as large as they are',
    },
    {
      fact: 'Weight of hemp, C²/4 lb a fathom',
      source: "F. A. Griffiths, The Artillerist's Manual, Cordage",
      because: 'ten per cent above the table of 1914, which is the one used',
    },
    {
      fact: 'Nylon stretches a third under safe loads',
      source: 'Basic Military Requirements, NAVEDTRA 12018',
      because: 'advice: no figure of ours rests on stretch',
    },
  ],
}
