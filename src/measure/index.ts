export type { Figure } from './figure.ts'
export { known, onceKnown, unknown, workedFrom } from './figure.ts'
export type {
  Kilograms,
  Metres,
  MetresPerSecond,
  Newtons,
  Pascals,
  Point3,
  Quantity,
  Radians,
  SquareMetres,
} from './quantity.ts'
export {
  kilograms,
  metres,
  metresPerSecond,
  newtons,
  pascals,
  point3,
  radians,
  squareMetres,
  sum,
} from './quantity.ts'
export type { FigureFault, FigureRead } from './reading.ts'
export { figureAt } from './reading.ts'
export type { LengthUnits, MassUnits } from './show.ts'
export { fixed, showAngle, showForce, showLength, showMass } from './show.ts'
export type { Unit, UnitDimension, UnitSymbol } from './units.ts'
export { unitOf, unitSpellings, units, unitsOffered } from './units.ts'
