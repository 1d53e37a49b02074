import { type MetresPerSecond, type Pascals, pascals } from '../../measure/index.ts'

/** Kilograms in a cubic metre of air at sea level: ISO 2533, standard atmosphere, from memory. */
const airDensity = 1.225

/** Pressure of the wind where it is stopped: half the density of the air times the square of its speed. */
export const windPressure = (speed: MetresPerSecond): Pascals => pascals((airDensity / 2) * speed ** 2)
