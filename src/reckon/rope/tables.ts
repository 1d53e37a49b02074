/** A table of breaking loads, or a rule that stands for one. */
export interface StrengthTable {
  /** As a text names it: 'manila'. */
  readonly material: string
  readonly source: string
  /** False where it is common practice, with no table read. */
  readonly isRead: boolean
  /** Diameter in metres and breaking load in newtons, thinnest first; one point alone is a rule of the square. */
  readonly points: readonly (readonly [diameter: number, breaking: number])[]
}

const inch = 0.0254
const poundForce = 4.4482216152605
const longTonForce = 2240 * poundForce

type Rows = readonly (readonly [size: number, breaking: number])[]

const byCircumference = (rows: Rows): StrengthTable['points'] =>
  rows.map(([inches, tons]) => [(inches * inch) / Math.PI, tons * longTonForce])
const byInches = (rows: Rows): StrengthTable['points'] =>
  rows.map(([inches, pounds]) => [inches * inch, pounds * poundForce])
const byMillimetres = (rows: Rows): StrengthTable['points'] =>
  rows.map(([millimetres, kilonewtons]) => [millimetres / 1000, kilonewtons * 1000])

const jutsum = 'Capt. J. N. Jutsum, Knots, Bends, Splices, Glasgow 1914, p. 85'
const trade = 'cordage trade, table of minimum tensile strength, three-strand'
const practice = "common practice, no table read: a maker's certificate always wins"

const read = (material: string, source: string, points: StrengthTable['points']): StrengthTable => ({
  material,
  source,
  isRead: true,
  points,
})

/** A rule: so many kilonewtons for the square of the diameter in millimetres. */
const ruled = (material: string, factor: number): StrengthTable => ({
  material,
  source: practice,
  isRead: false,
  points: byMillimetres([[1, factor]]),
})

/**
 * All tables. Plain "manila" is read in the oldest and lowest of them; the trade's own figures for rope bought now
 * stand under "modern manila". Both sorts of size that the trade prints stand side by side there, each as printed.
 */
export const strengthTables: readonly StrengthTable[] = [
  read(
    'manila',
    jutsum,
    byCircumference([
      [2, 1.3],
      [3, 2.9],
      [4, 5.15],
      [5, 8.1],
      [6, 11.65],
      [8, 20.7],
    ]),
  ),
  read(
    'tarred hemp',
    jutsum,
    byCircumference([
      [2, 0.95],
      [3, 2.1],
      [4, 3.85],
      [6, 8.45],
    ]),
  ),
  read(
    'coir',
    jutsum,
    byCircumference([
      [2, 0.3],
      [3, 0.7],
      [4, 1.25],
      [6, 2.9],
      [8, 5],
    ]),
  ),
  read(
    'flexible wire',
    jutsum,
    byCircumference([
      [1, 1.75],
      [1.5, 4],
      [2, 7],
      [3, 18],
      [4, 33],
    ]),
  ),
  read(
    'galvanised wire',
    jutsum,
    byCircumference([
      [2, 7],
      [3, 16],
      [4, 30],
    ]),
  ),
  read(
    'extra flexible wire',
    jutsum,
    byCircumference([
      [2, 11],
      [3, 25.5],
      [4, 44],
    ]),
  ),
  read('modern manila', `${trade}; Manila Ropes - Strength, metric sizes`, [
    ...byMillimetres([
      [10, 5.4],
      [12, 10.6],
    ]),
    ...byInches([[1 / 2, 2380]]),
    ...byMillimetres([[16, 17.6]]),
    ...byInches([[3 / 4, 4860]]),
    ...byMillimetres([[20, 26]]),
    ...byInches([[7 / 8, 6950]]),
    ...byMillimetres([
      [24, 36],
      [28, 48],
    ]),
    ...byInches([[9 / 8, 10_800]]),
    ...byMillimetres([[36, 74.1]]),
    ...byInches([[3 / 2, 16_700]]),
    ...byMillimetres([[48, 120]]),
    ...byInches([[2, 28_000]]),
  ]),
  read(
    'nylon',
    trade,
    byInches([
      [1 / 2, 5750],
      [3 / 4, 12_800],
      [3 / 2, 47_800],
      [2, 83_000],
    ]),
  ),
  read(
    'polypropylene',
    trade,
    byInches([
      [1 / 2, 3780],
      [3 / 4, 7650],
      [3 / 2, 26_800],
      [2, 46_800],
    ]),
  ),
  ruled('spun polyester', 0.12),
  ruled('braided polyester', 0.12),
  ruled('three-strand polyester', 0.155),
  ruled('pre-stretched polyester', 0.16),
  ruled('hemp-look polypropylene', 0.08),
  ruled('certified wire', 0.5),
]

/** Other words for a material: the weaker of what they may mean. */
export const otherWords: ReadonlyMap<string, string> = new Map([
  ['white manila', 'manila'],
  ['hemp', 'tarred hemp'],
  ['polyester', 'spun polyester'],
  ['wire', 'galvanised wire'],
  ['steel wire', 'galvanised wire'],
  ['galvanized wire', 'galvanised wire'],
  ['flexible steel wire', 'flexible wire'],
])
