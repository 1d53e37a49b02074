import { type Figure, known, type Quantity, unknown } from '../../measure/index.ts'
import { nearest } from '../../text/index.ts'

export type KilogramsPerSquareMetre = Quantity<'kg/m2'>

const squareYard = 0.9144 ** 2
const pound = 0.45359237

/** A list of canvas by number: what a square metre of each number weighs, as printed, lightest last. */
interface CanvasList {
  readonly source: string
  readonly weights: readonly (readonly [number: number, kilogramsPerSquareMetre: number])[]
}

const byOunces = (...rows: readonly (readonly [number, number])[]): CanvasList['weights'] =>
  rows.map(([number, ounces]) => [number, (ounces * pound) / 16 / squareYard])

/** Numbers 1, 2, 3 and so on by the pounds that a bolt weighs, so many yards long and so many inches wide. */
const byBolt = (yards: number, inches: number, ...pounds: readonly number[]): CanvasList['weights'] =>
  pounds.map((weight, i) => [i + 1, (weight * pound) / (yards * (inches / 36) * squareYard)])

const lists: ReadonlyMap<string, CanvasList> = new Map([
  [
    'cotton duck',
    { source: 'Seaman, NAVEDTRA 14067', weights: byOunces([1, 28.71], [6, 20.74], [12, 11.16]) },
  ],
  [
    'navy flax',
    {
      source: 'D. Steel, Sailmaking, 1794; R. Kipping, Sails and Sailmaking; from memory',
      weights: byBolt(38, 24, 44, 41, 38, 35, 32, 29, 24, 21),
    },
  ],
  [
    'merchant flax',
    {
      source: "Nicholls's Seamanship and Nautical Knowledge, p. 63",
      weights: byBolt(42, 24, 48.5),
    },
  ],
  [
    'American flax',
    {
      source: 'D. Lever, The Sheet Anchor, American edition 1863',
      weights: byBolt(40, 20, 47.5, 42.5, 35, 32.5, 30, 25, 22, 20),
    },
  ],
])

export const canvasNames: readonly string[] = [...lists.keys()]

/** Whether a list has a number of canvas, or two that it lies between. */
export const knowsCanvas = (canvas: string, number: number): boolean => canvasWeight(canvas, number).known

/** What a square metre of canvas of this number weighs; along a straight line between the numbers that are printed. */
export function canvasWeight(canvas: string, number: number): Figure<KilogramsPerSquareMetre> {
  const list = lists.get(canvas)
  if (!list) {
    const near = nearest(canvas, canvasNames)
    return unknown(
      `There is no canvas called "${canvas}".${near.length > 0 ? ` Nearest: ${near.join(', ')}.` : ''}`,
    )
  }
  const above = list.weights.findIndex(([printed]) => printed >= number)
  const high = list.weights[above]
  const low = list.weights[above - 1] ?? high
  if (!high || !low || number < low[0])
    return unknown(`The weight of number ${number} of ${canvas} is not known.`)
  const share = high === low ? 0 : (number - low[0]) / (high[0] - low[0])
  return known((low[1] + share * (high[1] - low[1])) as KilogramsPerSquareMetre)
}
