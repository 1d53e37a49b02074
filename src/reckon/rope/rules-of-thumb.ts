import { type Metres, type Newtons, newtons } from '../../measure/index.ts'

/** A rule of thumb for the breaking load of rope, by its circumference. They differ by a factor of two. */
export interface RuleOfThumb {
  readonly name: string
  readonly source: string
  /** Newtons for the square of the circumference in inches. */
  readonly perSquareInch: Newtons
}

const poundForce = 4.4482216152605
const pounds = (n: number) => newtons(n * poundForce)
const longTons = (n: number) => pounds(n * 2240)

const nicholls = "Nicholls's Seamanship and Nautical Knowledge, p. 346"
const dyer = 'A. B. Dyer, Handbook for Light Artillery, Cordage'
const griffiths = "F. A. Griffiths, The Artillerist's Manual, Cordage"
const examiners = 'rule of the US licence examination, as taught in a lesson on marlinespike work'

/** All rules, to be shown beside a table, never in its place. */
export const rulesOfThumb: readonly RuleOfThumb[] = [
  { name: 'manila, C²/3 long tons', source: nicholls, perSquareInch: longTons(1 / 3) },
  { name: 'manila, 900 C² lb', source: examiners, perSquareInch: pounds(900) },
  { name: 'nylon, 2.5 times manila', source: examiners, perSquareInch: pounds(2.5 * 900) },
  { name: 'polyester, twice manila', source: examiners, perSquareInch: pounds(2 * 900) },
  { name: 'polypropylene, 1.4 times manila', source: examiners, perSquareInch: pounds(1.4 * 900) },
  { name: 'manila, three-strand, 810 C² lb', source: dyer, perSquareInch: pounds(810) },
  { name: 'manila in use, 540 C² lb', source: dyer, perSquareInch: pounds(540) },
  { name: 'white hemp, three-strand, 1140 C² lb', source: dyer, perSquareInch: pounds(1140) },
  { name: 'tarred hemp, three-strand, 850 C² lb', source: dyer, perSquareInch: pounds(850) },
  { name: 'any rope, C²/4 short tons', source: dyer, perSquareInch: pounds(500) },
  { name: 'any rope, C²/5 long tons', source: griffiths, perSquareInch: longTons(1 / 5) },
  { name: 'wire of 12 wires a strand, 2 C² long tons', source: nicholls, perSquareInch: longTons(2) },
  { name: 'wire of 24 wires a strand, 3 C² long tons', source: nicholls, perSquareInch: longTons(3) },
  { name: 'wire of 37 wires a strand, 3.5 C² long tons', source: nicholls, perSquareInch: longTons(3.5) },
  { name: 'iron wire, C² long tons', source: dyer, perSquareInch: longTons(1) },
]

/** What a rule makes of a rope of this diameter; its circumference is taken as pi times that. */
export function byRule({ perSquareInch }: RuleOfThumb, diameter: Metres): Newtons {
  const circumference = (Math.PI * diameter) / 0.0254
  return newtons(perSquareInch * circumference ** 2)
}
