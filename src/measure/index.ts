export type { Figure, Kilograms, Metres, Point3, Quantity, Radians, SquareMetres } from './quantity.ts'
export { kilograms, known, metres, point3, radians, squareMetres, sum, unknown } from './quantity.ts'
