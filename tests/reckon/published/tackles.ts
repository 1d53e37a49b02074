import { newtons } from '../../../src/measure/index.ts'
import { usual } from '../../../src/reckon/assumptions.ts'
import {
  type FrictionModel,
  handsFor,
  pullRatio,
  purchaseOfBlocks,
  tackleOf,
} from '../../../src/reckon/tackle/index.ts'
import { exact, type PublishedRow, type Topic } from './row.ts'

const nicholls = (page: number) => `Nicholls's Seamanship and Nautical Knowledge, p. ${page}`
const jutsum = 'Capt. J. N. Jutsum, Knots, Bends, Splices, Glasgow 1914, pp. 49 to 54'
const spons = "Spons' Workshop Receipts, 5th series, tackle table"

const tackle = (...purchase: readonly string[]) => {
  const found = tackleOf(purchase)
  if (!found.known) throw new Error(found.because)
  return found.value
}

interface Case {
  readonly load: number
  readonly leads?: number
  readonly model?: FrictionModel
  readonly share?: number
}

/** Pull on the fall, in the unit of the load. */
function pull(
  purchase: readonly string[],
  { load, leads = 0, model = 'on the load', share = 0.1 }: Case,
): number {
  const ratio = pullRatio(tackle(...purchase), leads, { model, share })
  return ratio.known ? load * ratio.value : Number.NaN
}

const merchant = (
  fact: string,
  page: number,
  published: number,
  computed: number,
  within: PublishedRow['within'] = exact,
  unit = 'tons',
): PublishedRow => ({
  fact,
  source: nicholls(page),
  status: 'read',
  kind: 'computed',
  published,
  computed,
  unit,
  within,
})

/** The rule that each sheave adds a tenth of the load, as worked in a merchant officer's book. */
const ruleOfATenth: readonly PublishedRow[] = [
  merchant('Gun tackle to disadvantage, 4 tons: pull', 40, 2.4, pull(['gun'], { load: 4 })),
  merchant('Luff to advantage, 4 tons: pull', 40, 1.3, pull(['luff to advantage'], { load: 4 })),
  merchant('Luff to disadvantage, 15 tons: pull', 40, 6.5, pull(['luff'], { load: 15 })),
  merchant(
    'Double purchase to advantage, 20 cwt: pull',
    40,
    5.6,
    pull(['twofold to advantage'], { load: 20 }),
    exact,
    'cwt',
  ),
  merchant('Three-fold to disadvantage, 12 tons: pull', 40, 3.2, pull(['threefold'], { load: 12 })),
  merchant(
    'Three-fold to advantage, 12 tons: pull (printed 2.75)',
    40,
    2.75,
    pull(['threefold to advantage'], { load: 12 }),
    { share: 0.01 },
  ),
  merchant(
    'Three-fold to advantage, 40 tons: pull',
    40,
    9.14,
    pull(['threefold to advantage'], { load: 40 }),
    { share: 0.01 },
  ),
  merchant(
    'Three-fold to advantage and a lead at the mast-head, 12 tons: pull (2.91 rounded to 3)',
    42,
    3,
    pull(['threefold to advantage'], { load: 12, leads: 1 }),
    { share: 0.03 },
  ),
  merchant(
    'Two-fold with a gun tackle to advantage on its fall, 10 tons: pull',
    44,
    16 / 12,
    pull(['twofold', 'gun to advantage'], { load: 10 }),
  ),
  merchant(
    'Five-fold to advantage, 42 tons, two leads counted as one: pull',
    44,
    8,
    pull(['fivefold to advantage'], { load: 42, leads: 1 }),
    { share: 0.01 },
  ),
  merchant(
    'Two-fold to disadvantage and a lead, 10 tons: pull',
    48,
    3.75,
    pull(['twofold'], { load: 10, leads: 1 }),
  ),
  merchant(
    'Two-fold to advantage, two leads counted as one, 25 tons: pull',
    48,
    7.5,
    pull(['twofold to advantage'], { load: 25, leads: 1 }),
  ),
]

const ideal = (fact: string, published: number, computed: number, source = jutsum): PublishedRow => ({
  fact: `${fact}: power without friction`,
  source,
  status: 'read',
  kind: 'computed',
  published,
  computed,
  unit: '',
  within: exact,
})

function blockPower(one: string, other: string, rove: 'to advantage' | 'to disadvantage'): number {
  const purchase = purchaseOfBlocks([one, other], rove)
  return purchase.known ? purchase.value.advantage : Number.NaN
}

const powers: readonly PublishedRow[] = [
  ...(
    [
      ['whip', 1],
      ['double whip', 2],
      ['runner', 2],
      ['gun', 2],
      ['gun to advantage', 3],
      ['luff', 3],
      ['luff to advantage', 4],
      ['watch', 3],
      ['handy billy to advantage', 4],
      ['double luff', 4],
      ['double luff to advantage', 5],
      ['gyn', 5],
      ['gyn to advantage', 6],
      ['threefold', 6],
      ['threefold to advantage', 7],
      ['fourfold', 8],
      ['fourfold to advantage', 9],
      ['single spanish burton', 3],
      ['double spanish burton', 5],
    ] as const
  ).map(([name, power]) => ideal(name, power, tackle(name).advantage)),
  ...(
    [
      ['double', 'single', 'to disadvantage', 3],
      ['double', 'single', 'to advantage', 4],
      ['treble', 'double', 'to disadvantage', 5],
      ['treble', 'treble', 'to advantage', 7],
    ] as const
  ).map(([one, other, rove, power]) =>
    ideal(`${one} and ${other} block, ${rove}`, power, blockPower(one, other, rove)),
  ),
  ideal(
    'luff upon luff, both to advantage',
    16,
    tackle('luff to advantage', 'luff to advantage').advantage,
    'E. F. Knight, Small-Boat Sailing, p. 54',
  ),
]

const measured: readonly PublishedRow[] = (
  [
    [1, 1.1, 'whip'],
    [2, 0.62, 'gun'],
    [3, 0.45, 'luff'],
    [4, 0.37, 'twofold'],
    [5, 0.32, 'gyn'],
    [6, 0.28, 'threefold'],
  ] as const
).map(([parts, published, name]) => ({
  fact: `${parts} to 1 with white rope, measured: pull for a load of one`,
  source: spons,
  status: 'read',
  kind: 'computed',
  published,
  computed: pull([name], { load: 1 }),
  unit: '',
  within: { share: 0.08 },
}))

const otherModels: readonly PublishedRow[] = [
  {
    fact: 'Six sheaves, a tenth of the lift off for each, pull 4.5 tons: load lifted',
    source: spons,
    status: 'read',
    kind: 'computed',
    published: 10.8,
    computed: 4.5 / pull(['threefold'], { load: 1, model: 'off the lift' }),
    unit: 'tons',
    within: exact,
  },
  {
    fact: 'The same six sheaves by the rule that adds a tenth of the load: share of the power that is useful',
    source: spons,
    status: 'read',
    kind: 'computed',
    published: 0.625,
    computed: 1 / 6 / pull(['threefold'], { load: 1 }),
    unit: '',
    within: exact,
  },
  ...(
    [
      ['gun', 0.576],
      ['luff', 0.402],
      ['twofold', 0.315],
      ['gyn', 0.264],
      ['threefold', 0.23],
    ] as const
  ).map(
    ([name, published]): PublishedRow => ({
      fact: `Compounding, a tenth at each sheave, ${name}: pull for a load of one`,
      source: 'mechanics of machines, efficiency of sheaves in series',
      status: 'from memory',
      kind: 'computed',
      published,
      computed: pull([name], { load: 1, model: 'compounding' }),
      unit: '',
      within: { share: 0.005 },
    }),
  ),
  {
    fact: 'Fall force of a tackle: (load + resistance of a tenth a sheave) / advantage, luff, 1,000 lb',
    source: 'TB 9-2350-292-10 (recovery vehicle manual)',
    status: 'read',
    kind: 'computed',
    published: (1000 + 1000 * 0.1 * 3) / 3,
    computed: pull(['luff'], { load: 1000 }),
    unit: 'lb',
    within: exact,
  },
]

/** Power that is left after friction, as a light artilleryman reckoned on it. */
const practical: readonly PublishedRow[] = (
  [
    ['Two double blocks', ['twofold to advantage'], 3.33, 0.1],
    ['Double and treble block', ['gyn to advantage'], 4, 0.1],
    ['Two treble blocks', ['threefold to advantage'], 4.5, 0.1],
    ['Whip upon whip', ['whip upon whip'], 3, 0.12],
  ] as const
).map(([fact, purchase, published, share]) => ({
  fact: `${fact}: power left after friction`,
  source: 'A. B. Dyer, Handbook for Light Artillery, pp. 318 to 319',
  status: 'read',
  kind: 'computed',
  published,
  computed: 1 / pull(purchase, { load: 1 }),
  unit: '',
  within: { share },
}))

function hands(tonnes: number, purchase: string, hand: number): number {
  const ratio = pullRatio(tackle(purchase), 0, { model: 'on the load', share: 0.1 })
  const fall = ratio.known ? newtons(tonnes * 1000 * 9.80665 * ratio.value) : newtons(Number.NaN)
  const found = handsFor(fall, { hand: newtons(hand), loss: 0 })
  return found.known ? found.value : Number.NaN
}

const lbf = 4.4482216152605

const handForce: readonly PublishedRow[] = [
  {
    fact: 'Steady pull of one hand, standing, the whole body: the default',
    source: 'Eastman Kodak, Ergonomic Design for People at Work, vol. 2, 1986',
    status: 'second-hand',
    kind: 'policy',
    published: 225,
    computed: usual.hands.hand,
    unit: 'N',
    within: exact,
  },
  {
    fact: '3 t on a luff to disadvantage: pull',
    source: `${nicholls(42)}, the rule worked`,
    status: 'read',
    kind: 'computed',
    published: 12749,
    computed: pull(['luff'], { load: 3000 * 9.80665 }),
    unit: 'N',
    within: { amount: 0.5 },
  },
  {
    fact: '3 t on a luff to disadvantage: hands at 225 N',
    source: 'Eastman Kodak, Ergonomic Design for People at Work, vol. 2, 1986, the rule worked',
    status: 'second-hand',
    kind: 'computed',
    published: 57,
    computed: hands(3, 'luff', 225),
    unit: 'hands',
    within: exact,
  },
  {
    fact: '3 t on a luff to disadvantage: hands at 80 lb, the most of the old figures',
    source: 'W. Duane, A Military Dictionary, 1810, p. 677, the rule worked',
    status: 'read',
    kind: 'computed',
    published: 36,
    computed: hands(3, 'luff', 80 * lbf),
    unit: 'hands',
    within: exact,
  },
]

export const tackles: Topic = {
  title: 'Tackles, friction and hands',
  rows: [...ruleOfATenth, ...powers, ...measured, ...otherModels, ...practical, ...handForce],
  passedOver: [
    {
      fact: '5 to 8 % off for each sheave, by subtraction',
      source: 'C. W. Ashley, The Ashley Book of Knots, 1944, pp. 536 and 541',
      because: 'a range, met by choosing the share: the model "off the lift" takes any',
    },
    {
      fact: 'A tackle twisted one turn needs 40 % more power against friction',
      source: spons,
      because: 'the text of a rig knows no twisted tackle; it stands in the caution of the page',
    },
    {
      fact: 'Gun tackle: a power just under 2',
      source: 'A. B. Dyer, Handbook for Light Artillery, p. 318',
      because: 'no figure to compare; by the rule 1.67 to disadvantage, 2.31 to advantage',
    },
    {
      fact: 'Fixed blocks gain nothing; tensions added at the load give the power',
      source: 'S. B. Luce, Text-Book of Seamanship, 1891, ch. VI',
      because: 'a method, not a figure: it is how the powers above are found',
    },
    {
      fact: 'Arms only 110 N, kneeling 188 N, seated 130 N',
      source: 'Eastman Kodak, 1986, second-hand',
      because: 'hands on a fall stand and walk away with it; another force may be given',
    },
    {
      fact: 'Winch handle 30 lb all day, 50 lb for a short time; 12 to 14 lb at a crane for ten hours',
      source: 'W. Duane, 1810, p. 677; J. Glynn, Construction of Cranes, 1849, p. 25',
      because: 'work of hours, which no line of a rig asks for; the force of a hand may be given',
    },
    {
      fact: 'A straight downward pull is at most the weight of the hauler',
      source: 'C. W. Ashley, 1944, p. 538',
      because: 'falls are taken as led along the deck; no weight of a hand is known',
    },
    {
      fact: '107 N sustained, 196 N to start; 20 and 15 kgf; one-handed 15 kgf; 25 lb over a pulley',
      source:
        'force guidelines after Snook and Ciriello; HSE RR 228, 2004; Mital and others; Amontons in Gwilt, p. 377',
      because: 'other constants for the same thing: a user may give one, the program keeps one default',
    },
    {
      fact: 'Hands give less each in a large party; parties of up to four are set apart',
      source: 'Admiralty Manual of Seamanship vol. III, second-hand, its numbers not seen',
      because:
        'no number was read: the loss beyond the fourth hand may be given; beside the hands without it the tables show a tenth',
    },
    {
      fact: 'Vertical pulls by height; psychophysical tables; both-hands horizontal push',
      source: 'CCOHS after Kodak; Garg and others, 2014; MIL-STD-1472 (from memory)',
      because: 'not read far enough to be used',
    },
  ],
}
