import { type Figure, known, type Metres, type Quantity, unknown } from '../../measure/index.ts'

export type KilogramsPerMetre = Quantity<'kg/m'>

const poundsAFathom = 0.45359237 / 1.8288
const squareInchRound = (Math.PI / 0.0254) ** 2

/** Kilograms a metre for the square of the diameter in metres. */
const round = (poundsPerSquareInch: number) => poundsPerSquareInch * poundsAFathom * squareInchRound

/**
 * Manila and tarred hemp: Capt. J. N. Jutsum, Knots, Bends, Splices, Glasgow 1914, p. 85. The others from memory of
 * makers' lists: 16 mm of polyester weighs about 0.196 kg a metre, of nylon 0.158, of polypropylene 0.115, of wire 0.92.
 */
const perSquare: ReadonlyMap<string, number> = new Map([
  ['manila', round(0.183)],
  ['tarred hemp', round(0.228)],
  ['polyester', 766],
  ['nylon', 617],
  ['polypropylene', 449],
  ['wire', 3594],
])

/** What a metre of new, dry rope weighs. */
export function ropeWeight(material: string | undefined, diameter: Metres): Figure<KilogramsPerMetre> {
  if (material === undefined) return unknown('The material of its rope is not said.')
  const said = material.toLowerCase().replace(/^.* with (.+) fall$/, '$1')
  const kind = said === 'hemp' ? 'tarred hemp' : [...perSquare.keys()].find(one => said.endsWith(one))
  const factor = kind === undefined ? undefined : perSquare.get(kind)
  return factor === undefined
    ? unknown(`The weight of "${material}" is not known.`)
    : known((factor * diameter ** 2) as KilogramsPerMetre)
}
