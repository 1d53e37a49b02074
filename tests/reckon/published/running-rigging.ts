import { squareMetres } from '../../../src/measure/index.ts'
import { type LeadFigures, leadFigures, tail } from '../../../src/reckon/leads/index.ts'
import { tackleOf } from '../../../src/reckon/tackle/index.ts'
import type { Rig } from '../../../src/rig/index.ts'
import { compiledRig, compiledText } from '../../support/compiled.ts'
import { compiledEnlarged } from '../../support/enlarged.ts'
import { exact, type PublishedRow, type Topic } from './row.ts'

const dana = "R. H. Dana Jr, The Seaman's Friend, 5th ed., Boston 1847, ch. III"
const bond = 'H. Bond, A Plain and Easie Rule to Rigge any Ship, 1664'
const anderson = 'R. C. Anderson, The Rigging of Ships 1600-1720'
const practice = 'common practice, no source'

const barque = compiledRig('barque-harrow-tansy').value
const barqueLeads = leadFigures(barque.rig)

function known(figures: LeadFigures | undefined, which: 'length' | 'hauled' | 'travel' | 'slack'): number {
  const figure = figures?.[which]
  return figure?.known ? figure.value : Number.NaN
}

const lengthOf = (address: string): number => known(barqueLeads.get(address), 'length')

const row = (
  fact: string,
  source: string,
  published: number | string,
  computed: number | string,
  rest: Partial<PublishedRow> = {},
): PublishedRow => ({
  fact,
  source,
  status: 'read',
  kind: 'computed',
  published,
  computed,
  unit: '',
  within: exact,
  ...rest,
})

/** A luff, its blocks 5 m apart at the most, 10 m from its pin, its load travelling 2 m. */
const luff = leadFigures(
  compiledText(`spars
  boom, from 0.00 m aft 7.00 m up to 3.00 m aft 7.00 m up
rails
  cleat at 0.00 m aft 1.00 m up, marked C
lines
  lift single, rove luff
    tops boom on boom, travels 2.00 m
    upper block at 0.00 m aft 11.00 m up
    through upper block to 3.00 m aft 7.00 m up
belay lift to cleat
`).value.rig,
).get('lift')

const knight = 'E. F. Knight, Small-Boat Sailing, pp. 54 and 56'

const tackles: readonly PublishedRow[] = [
  row(
    'fall of a luff, 5 m between its blocks, 10 m to its pin: rope',
    'mensuration',
    3 * 5 + 10 + tail,
    known(luff, 'length'),
    {
      status: 'from memory',
      unit: 'm',
    },
  ),
  row('fall hauled by a luff for 2 m of its load: travel times the parts', knight, 6, known(luff, 'hauled'), {
    unit: 'm',
  }),
  ...(
    [
      ['luff', 6],
      ['twofold', 8],
    ] as const
  ).map(([fall, power]) =>
    row(`topsail halyard: tye, runner and ${fall}: power`, dana, power, powerOf(['tye', 'runner', fall])),
  ),
]

function powerOf(purchase: readonly string[]): number {
  const tackle = tackleOf(purchase)
  return tackle.known ? tackle.value.advantage : Number.NaN
}

/** The names of a line's leads, from the clew or yard down to the deck. */
const wayOf = (address: string): string =>
  (barque.rig.lineAt.get(address)?.lead ?? [])
    .slice(1)
    .map(({ what }) => what)
    .toReversed()
    .join(', ')

/** What the standard gear does unless a text says otherwise. */
const policy = { kind: 'policy' } as const

const ways: readonly PublishedRow[] = [
  row(
    'topgallant sheet, from the clew down: a sheave in the yardarm below, a quarter block, the deck',
    dana,
    'clew, sheet sheave, lower quarter block',
    wayOf('fore.topgallant.sheet.port'),
    policy,
  ),
  row(
    'topgallant clewline: a quarter block',
    dana,
    'clew, quarter block',
    wayOf('fore.topgallant.clewline.port'),
    policy,
  ),
  row(
    'reef tackle: from the leech to a block in the yard, and down',
    dana,
    'reef cringle, yardarm sheave, upper lead block',
    wayOf('fore.upper-topsail.reef-tackle.port'),
    policy,
  ),
]

const single: readonly PublishedRow[] = (
  ['royal.sheet.port', 'royal.clewline.port', 'royal.brace.port', 'topgallant.sheet.port'] as const
).map(line =>
  row(
    `${line.replaceAll('.', ' ').replace(' port', '')}: purchase`,
    dana,
    'single',
    barque.rig.lineAt.get(`fore.${line}`)?.purchase.join(' and ') ?? '',
    policy,
  ),
)

const yard = 18.82
/** A rule of thumb, for another century's gear. */
const roughly = { share: 0.3 }
const shrouds = barque.rig.standing.find(({ name }) => name === 'fore shrouds')
const shroud =
  shrouds?.from && shrouds.to
    ? Math.hypot(shrouds.to.x - shrouds.from.x, shrouds.to.y - shrouds.from.y, shrouds.to.z - shrouds.from.z)
    : Number.NaN

const oldLengths: readonly PublishedRow[] = (
  [
    ['clewgarnet: three times the shroud', 3 * shroud, 'fore.course.clewgarnet.port'],
    ['course buntline: twice the mast from deck to top', 2 * (13.4 - 2.7), 'fore.course.outer-buntline.port'],
    ['course sheet: two and a half times the yard', 2.5 * yard, 'fore.course.sheet.port'],
    ['course brace: twice the yard', 2 * yard, 'fore.course.brace.port'],
    ['topsail sheet: twice the lower yard', 2 * yard, 'fore.lower-topsail.sheet.port'],
  ] as const
).map(([fact, published, address]) =>
  row(`${fact}; the barque's, fore yard 18.82 m: rope`, bond, published, lengthOf(address), {
    unit: 'm',
    within: roughly,
  }),
)

/** Rope in the hauling part and the tackle of a halyard on a tye, as riggers count it. */
const halyards: readonly PublishedRow[] = (
  [
    ['upper topsail', 6 * 3.7 + 12],
    ['topgallant', 3 * 2.7 + 12],
    ['royal', 2 * 2.8 + 12],
  ] as const
).map(([sail, published]) =>
  row(
    `fall of the fore ${sail} halyard: travel times the parts, and 12 m`,
    practice,
    published,
    lengthOf(`fore.${sail.replace(' ', '-')}.halyard`),
    { status: 'common practice', unit: 'm', within: { share: 0.2 } },
  ),
)

const wantedArea = squareMetres(19_000 * 0.3048 ** 2)
const mile = 1609.344

/** Rope of all lines of the barque, enlarged until she carries so much canvas. */
function ropeAt(area: number): number {
  const { total } = barque.figures
  if (!total.known) return Number.NaN
  const { rig }: { readonly rig: Rig } = compiledEnlarged(
    'barque-harrow-tansy',
    Math.sqrt(area / total.value),
  ).value
  return [...leadFigures(rig).values()].reduce((sum, figures) => sum + known(figures, 'length'), 0)
}

export const runningRigging: Topic = {
  title: 'Running rigging: leads and lengths',
  rows: [
    ...tackles,
    ...ways,
    ...single,
    ...oldLengths,
    ...halyards,
    row(
      'a three-masted barque of about 19,000 square feet of canvas: all running rigging; the example barque, enlarged to that area, from her leads alone',
      practice,
      4.5,
      ropeAt(wantedArea) / mile,
      { status: 'common practice', unit: 'miles', within: { share: 0.2 } },
    ),
  ],
  passedOver: [
    {
      fact: 'sizes by circumference from the main mast: stays, shrouds, tyes, halyards, sheets, clewlines, lifts, braces, bowlines, buntlines (rule and worked example)',
      source: `${anderson} (second-hand)`,
      because: 'hemp of 1600 to 1720; no rope is sized by rule here: a text says its rope',
    },
    {
      fact: 'block shells of twelve, sheaves of nine times the rope; deadeyes of half the mast',
      source: `${anderson} (second-hand)`,
      because: 'the same list; a text says no size of a block',
    },
    {
      fact: 'leechlines of twice the yard, topsail clewlines of three times and bowlines of two and a half times the fore yard, lifts of three times the shroud',
      source: bond,
      because:
        'gear of 1664 that is rove otherwise here (double leechlines, deep single topsails) or not at all',
    },
    {
      fact: 'topsail braces of 2.33 times the fore yard',
      source: bond,
      because: "they led to the main stay; the barque's lead to the main top and are double",
    },
    {
      fact: 'course buntlines led to blocks below the fore edge of the top, topsail buntlines to the topmast-head',
      source: dana,
      because: 'the example gear leads them to the yard, as later ships do',
    },
    {
      fact: 'gun-tackle clewlines of topsails and topgallants, gun tackle on topsail sheets, double tacks and sheets of courses, single royal halyards',
      source: dana,
      because: 'tested on a ship rigged in that style (tests/rigs/dana-style.test.ts), not on the barque',
    },
    {
      fact: 'peak halyard blocks a third and two thirds in from the peak; a two-fold throat halyard; two peak brails a side',
      source: dana,
      because: 'the example gaffs have one place for their blocks, and the example spanker stands',
    },
  ],
}
